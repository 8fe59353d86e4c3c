<!DOCTYPE qgis PUBLIC 'http://mrcc.com/qgis.dtd' 'SYSTEM'>
<!-- SPDX-License-Identifier: GPL-2.0-or-later -->
<qgis version="3.22.16" styleCategories="Symbology|Labeling|MapTips" labelsEnabled="1">
  <renderer-v2 type="RuleRenderer" symbollevels="1">
    <rules key="pieces">
      <rule key="blocked" symbol="3" label="NOT PASSED: runs into an obstacle" filter="&quot;blocked_m&quot; &gt; 0"/>
      <rule key="along" symbol="0" label="Along the leg (number: turn, dial, paces)" filter="&quot;part&quot; = 'along' and not &quot;blocked_m&quot; &gt; 0"/>
      <rule key="past" symbol="1" label="Past the obstacle (counts)" filter="&quot;part&quot; = 'past'"/>
      <rule key="square" symbol="2" label="Out and back (do not count)" filter="&quot;part&quot; in ('out', 'back')"/>
    </rules>
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
                <Option name="offset" type="QString" value="-1.2,0"/>
                <Option name="size" type="QString" value="4"/>
                <Option name="color" type="QString" value="20,20,20,255"/>
                <Option name="outline_color" type="QString" value="255,255,255,255"/>
                <Option name="outline_width" type="QString" value="0.3"/>
              </Option>
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
                <Option name="size" type="QString" value="1.8"/>
                <Option name="color" type="QString" value="255,255,255,255"/>
                <Option name="outline_color" type="QString" value="20,20,20,255"/>
                <Option name="outline_width" type="QString" value="0.5"/>
              </Option>
            </layer>
          </symbol>
        </layer>
      </symbol>
      <symbol name="1" type="line" alpha="1">
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
            <Option name="use_custom_dash" type="QString" value="1"/>
            <Option name="customdash" type="QString" value="3.2;1.2"/>
            <Option name="line_color" type="QString" value="20,20,20,255"/>
            <Option name="line_width" type="QString" value="0.7"/>
          </Option>
        </layer>
        <layer class="MarkerLine" enabled="1" pass="2" locked="0">
          <Option type="Map">
            <Option name="placement" type="QString" value="lastvertex"/>
            <Option name="rotate" type="QString" value="1"/>
          </Option>
          <symbol name="@1@2" type="marker" alpha="1">
            <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
              <Option type="Map">
                <Option name="name" type="QString" value="filled_arrowhead"/>
                <Option name="size" type="QString" value="4"/>
                <Option name="color" type="QString" value="20,20,20,255"/>
                <Option name="outline_color" type="QString" value="255,255,255,255"/>
                <Option name="outline_width" type="QString" value="0.3"/>
              </Option>
            </layer>
          </symbol>
        </layer>
      </symbol>
      <symbol name="2" type="line" alpha="1">
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="capstyle" type="QString" value="round"/>
            <Option name="line_color" type="QString" value="255,255,255,255"/>
            <Option name="line_width" type="QString" value="1.8"/>
          </Option>
        </layer>
        <layer class="SimpleLine" enabled="1" pass="1" locked="0">
          <Option type="Map">
            <Option name="capstyle" type="QString" value="round"/>
            <Option name="use_custom_dash" type="QString" value="1"/>
            <Option name="customdash" type="QString" value="0.1;1.4"/>
            <Option name="line_color" type="QString" value="20,20,20,255"/>
            <Option name="line_width" type="QString" value="0.8"/>
          </Option>
        </layer>
        <layer class="MarkerLine" enabled="1" pass="2" locked="0">
          <Option type="Map">
            <Option name="placement" type="QString" value="lastvertex"/>
            <Option name="rotate" type="QString" value="1"/>
          </Option>
          <symbol name="@2@2" type="marker" alpha="1">
            <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
              <Option type="Map">
                <Option name="name" type="QString" value="filled_arrowhead"/>
                <Option name="offset" type="QString" value="-1.2,0"/>
                <Option name="size" type="QString" value="4"/>
                <Option name="color" type="QString" value="20,20,20,255"/>
                <Option name="outline_color" type="QString" value="255,255,255,255"/>
                <Option name="outline_width" type="QString" value="0.3"/>
              </Option>
            </layer>
          </symbol>
        </layer>
      </symbol>
      <symbol name="3" type="line" alpha="1">
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
            <Option name="line_width" type="QString" value="0.4"/>
          </Option>
        </layer>
        <layer class="MarkerLine" enabled="1" pass="2" locked="0">
          <Option type="Map">
            <Option name="placement" type="QString" value="interval"/>
            <Option name="interval" type="QString" value="4"/>
            <Option name="interval_unit" type="QString" value="MM"/>
            <Option name="rotate" type="QString" value="1"/>
          </Option>
          <symbol name="@3@2" type="marker" alpha="1">
            <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
              <Option type="Map">
                <Option name="name" type="QString" value="cross2"/>
                <Option name="size" type="QString" value="2.4"/>
                <Option name="color" type="QString" value="20,20,20,255"/>
                <Option name="outline_color" type="QString" value="190,20,20,255"/>
                <Option name="outline_width" type="QString" value="0.6"/>
              </Option>
            </layer>
          </symbol>
        </layer>
      </symbol>
    </symbols>
  </renderer-v2>
  <labeling type="simple">
    <settings>
      <text-style isExpression="1" fieldName="case when &quot;piece&quot; = 1 then &quot;leg&quot; || ':  ' else '' end || coalesce(&quot;turn&quot; || ' ', '') || coalesce(&quot;dial_text&quot;, '–') || case when &quot;walker&quot; is null or @brushline_walker = '' then '' else '  ' || &quot;walker&quot; end || '  ' || &quot;paces&quot;" fontFamily="Sans Serif" fontSize="9" fontSizeUnit="Point" fontWeight="75" textColor="20,20,20,255" textOpacity="1">
        <text-buffer bufferDraw="1" bufferSize="0.9" bufferSizeUnits="MM" bufferColor="255,255,255,255" bufferOpacity="1" bufferJoinStyle="128" bufferNoFill="1"/>
      </text-style>
      <placement placement="2" placementFlags="6" dist="1.2" distUnits="MM" overrunDistance="6" overrunDistanceUnit="MM" priority="10"/>
      <rendering drawLabels="1" obstacle="1" obstacleFactor="1" obstacleType="1"/>
      <dd_properties>
        <Option type="Map">
          <Option name="name" type="QString" value=""/>
          <Option name="properties" type="Map">
            <Option name="Show" type="Map">
              <Option name="active" type="bool" value="true"/>
              <Option name="expression" type="QString" value="&quot;walker&quot; is null or coalesce(@brushline_walker, '') in ('', &quot;walker&quot;)"/>
              <Option name="type" type="int" value="3"/>
            </Option>
          </Option>
          <Option name="type" type="QString" value="collection"/>
        </Option>
      </dd_properties>
    </settings>
  </labeling>
  <mapTip>&lt;b&gt;[% replace("route", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) %], leg [% "leg" %], [% replace("part", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) %][% coalesce(' round ' || replace("obstacle", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')), '') %]&lt;/b&gt;&lt;br&gt;[% coalesce('turn ' || replace("turn", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) || ', ', '') %]dial &lt;b&gt;[% coalesce(replace("dial_text", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')), '–') %]&lt;/b&gt;, [% round("dist_m") %] m&lt;br&gt;[% concatenate(coalesce(replace("walker", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) || ': ', '') || "paces" || ' paces, then go on from ' || "run_paces", group_by:=array_to_string(array("route", "leg", "direction", "piece"), '|'), concatenator:='&lt;br&gt;', order_by:=$id) %]&lt;br&gt;[% coalesce(replace("warnings", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')), '') %]</mapTip>
  <layerGeometryType>1</layerGeometryType>
</qgis>
