<!DOCTYPE qgis PUBLIC 'http://mrcc.com/qgis.dtd' 'SYSTEM'>
<!-- SPDX-License-Identifier: GPL-2.0-or-later -->
<qgis version="3.22.16" styleCategories="Symbology|Labeling|MapTips" labelsEnabled="1">
  <renderer-v2 type="RuleRenderer" symbollevels="1">
    <rules key="walked">
      <rule key="sure" symbol="0" label="Walked leg (degrees off, metres too long)" filter="&quot;remark&quot; is null or &quot;dist_diff&quot; is not null"/>
      <rule key="unsure" symbol="1" label="Not all of it known: see its remark" filter="&quot;dist_diff&quot; is null"/>
    </rules>
    <symbols>
      <symbol name="0" type="line" alpha="1">
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="capstyle" type="QString" value="round"/>
            <Option name="line_color" type="QString" value="255,255,255,255"/>
            <Option name="line_width" type="QString" value="1.6"/>
          </Option>
        </layer>
        <layer class="SimpleLine" enabled="1" pass="1" locked="0">
          <Option type="Map">
            <Option name="capstyle" type="QString" value="flat"/>
            <Option name="use_custom_dash" type="QString" value="1"/>
            <Option name="customdash" type="QString" value="2.6;1"/>
            <Option name="line_color" type="QString" value="170,30,30,255"/>
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
                <Option name="offset" type="QString" value="-1,0"/>
                <Option name="size" type="QString" value="3.4"/>
                <Option name="color" type="QString" value="170,30,30,255"/>
                <Option name="outline_color" type="QString" value="255,255,255,255"/>
                <Option name="outline_width" type="QString" value="0.3"/>
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
            <Option name="line_width" type="QString" value="1.6"/>
          </Option>
        </layer>
        <layer class="SimpleLine" enabled="1" pass="1" locked="0">
          <Option type="Map">
            <Option name="capstyle" type="QString" value="round"/>
            <Option name="use_custom_dash" type="QString" value="1"/>
            <Option name="customdash" type="QString" value="0.1;1.4"/>
            <Option name="line_color" type="QString" value="170,30,30,255"/>
            <Option name="line_width" type="QString" value="0.8"/>
          </Option>
        </layer>
      </symbol>
    </symbols>
  </renderer-v2>
  <labeling type="simple">
    <settings>
      <text-style isExpression="1" fieldName="&quot;leg&quot; || ':  ' || coalesce(case when &quot;brg_diff&quot; &gt; 0 then '+' else '' end || format_number(&quot;brg_diff&quot;, 1) || '°', '–') || coalesce('  ' || case when &quot;dist_diff&quot; &gt; 0 then '+' else '' end || round(&quot;dist_diff&quot;) || ' m', '')" fontFamily="Sans Serif" fontSize="8" fontSizeUnit="Point" fontWeight="75" textColor="120,20,20,255" textOpacity="1">
        <text-buffer bufferDraw="1" bufferSize="0.9" bufferSizeUnits="MM" bufferColor="255,255,255,255" bufferOpacity="1" bufferJoinStyle="128" bufferNoFill="1"/>
      </text-style>
      <placement placement="2" placementFlags="6" dist="1" distUnits="MM" overrunDistance="8" overrunDistanceUnit="MM" priority="8"/>
      <rendering drawLabels="1" obstacle="1" obstacleFactor="1" obstacleType="1"/>
    </settings>
  </labeling>
  <mapTip>&lt;b&gt;[% replace("route", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) %], leg [% "leg" %] ([% "direction" %])&lt;/b&gt;, track [% replace("track", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) %][% coalesce(', ' || replace("walker", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')), '') %]&lt;br&gt;meant [% round("true_brg", 1) %]° [% round("dist_m") %] m, walked [% coalesce(round("walked_brg", 1), '–') %]° [% coalesce(round("walked_m"), '–') %] m&lt;br&gt;end missed by [% coalesce(round("miss_m") || ' m', '–') %], by this leg's own errors [% coalesce(round("own_m") || ' m', '–') %]&lt;br&gt;[% coalesce(round("minutes", 1) || ' min', '') %]&lt;br&gt;[% coalesce(replace("remark", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')), '') %]</mapTip>
  <layerGeometryType>1</layerGeometryType>
</qgis>
