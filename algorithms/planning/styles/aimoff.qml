<!DOCTYPE qgis PUBLIC 'http://mrcc.com/qgis.dtd' 'SYSTEM'>
<!-- SPDX-License-Identifier: GPL-2.0-or-later -->
<qgis version="3.22.16" styleCategories="Symbology|Labeling|MapTips" labelsEnabled="1">
  <renderer-v2 type="singleSymbol" symbollevels="1">
    <symbols>
      <symbol name="0" type="line" alpha="1">
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="capstyle" type="QString" value="round"/>
            <Option name="line_color" type="QString" value="255,255,255,255"/>
            <Option name="line_width" type="QString" value="1.8"/>
          </Option>
        </layer>
        <layer class="SimpleLine" enabled="1" pass="1" locked="0">
          <Option type="Map">
            <Option name="capstyle" type="QString" value="flat"/>
            <Option name="line_color" type="QString" value="20,20,20,255"/>
            <Option name="line_width" type="QString" value="0.7"/>
          </Option>
        </layer>
        <layer class="MarkerLine" enabled="1" pass="2" locked="0">
          <Option type="Map">
            <Option name="placement" type="QString" value="lastvertex"/>
            <Option name="rotate" type="QString" value="1"/>
          </Option>
          <symbol name="@0@2" type="marker" alpha="1">
            <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
              <Option type="Map">
                <Option name="name" type="QString" value="filled_arrowhead"/>
                <Option name="offset" type="QString" value="-0.1,0"/>
                <Option name="size" type="QString" value="4"/>
                <Option name="color" type="QString" value="20,20,20,255"/>
                <Option name="outline_color" type="QString" value="255,255,255,255"/>
                <Option name="outline_width" type="QString" value="0.3"/>
              </Option>
            </layer>
            <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
              <Option type="Map">
                <Option name="name" type="QString" value="filled_arrowhead"/>
                <Option name="offset" type="QString" value="3.6,0"/>
                <Option name="size" type="QString" value="3.4"/>
                <Option name="color" type="QString" value="255,255,255,255"/>
                <Option name="outline_color" type="QString" value="20,20,20,255"/>
                <Option name="outline_width" type="QString" value="0.5"/>
              </Option>
              <data_defined_properties>
                <Option type="Map">
                  <Option name="name" type="QString" value=""/>
                  <Option name="properties" type="Map">
                    <Option name="angle" type="Map">
                      <Option name="active" type="bool" value="true"/>
                      <Option name="expression" type="QString" value="case when &quot;turn&quot; = 'left' then -90 else 90 end"/>
                      <Option name="type" type="int" value="3"/>
                    </Option>
                    <Option name="enabled" type="Map">
                      <Option name="active" type="bool" value="true"/>
                      <Option name="expression" type="QString" value="&quot;turn&quot; is not null"/>
                      <Option name="type" type="int" value="3"/>
                    </Option>
                  </Option>
                  <Option name="type" type="QString" value="collection"/>
                </Option>
              </data_defined_properties>
            </layer>
          </symbol>
        </layer>
        <layer class="MarkerLine" enabled="1" pass="3" locked="0">
          <Option type="Map">
            <Option name="placement" type="QString" value="firstvertex"/>
          </Option>
          <symbol name="@0@3" type="marker" alpha="1">
            <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
              <Option type="Map">
                <Option name="name" type="QString" value="circle"/>
                <Option name="size" type="QString" value="2.2"/>
                <Option name="color" type="QString" value="255,255,255,255"/>
                <Option name="outline_color" type="QString" value="20,20,20,255"/>
                <Option name="outline_width" type="QString" value="0.5"/>
              </Option>
            </layer>
          </symbol>
        </layer>
      </symbol>
    </symbols>
  </renderer-v2>
  <labeling type="simple">
    <settings calloutType="simple">
      <text-style fieldName="coalesce(&quot;dial_text&quot;, '–') || '  ' || &quot;paces&quot; || case when &quot;turn&quot; is null then '' else ', then ' || &quot;turn&quot; || '  ' || &quot;line_paces&quot; end" isExpression="1" fontSize="9" fontSizeUnit="Point" fontFamily="Sans Serif" fontWeight="75" textColor="20,20,20,255" textOpacity="1">
        <text-buffer bufferDraw="1" bufferSize="0.9" bufferSizeUnits="MM" bufferColor="255,255,255,255" bufferOpacity="1" bufferJoinStyle="128" bufferNoFill="1"/>
      </text-style>
      <placement placement="2" placementFlags="2" dist="1.2" distUnits="MM" overrunDistance="2" overrunDistanceUnit="MM" priority="10"/>
      <rendering drawLabels="1" obstacle="1" obstacleFactor="1" obstacleType="1"/>
    </settings>
  </labeling>
  <mapTip>&lt;b&gt;[% replace("route", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) %][% coalesce(' to ' || replace("line", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')), '') %][% coalesce(', for ' || replace("dest_name", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')), '') %]&lt;/b&gt;&lt;br&gt;[% coalesce(replace("walker", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) || ': ', '') %]dial &lt;b&gt;[% coalesce(replace("dial_text", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')), '–') %]&lt;/b&gt;, [% "paces" %] paces[% coalesce('&lt;br&gt;then &lt;b&gt;' || replace("turn", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) || '&lt;/b&gt; along the line, ' || "line_paces" || ' paces, ' || round("along_line_m") || ' m', '') %]&lt;br&gt;without the line after [% "stop_paces" %] paces: stop&lt;br&gt;[% coalesce(replace("catch", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')), 'nothing known to catch you beyond') %]&lt;br&gt;[% coalesce(replace("warnings", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')), '') %]</mapTip>
  <layerGeometryType>1</layerGeometryType>
</qgis>
