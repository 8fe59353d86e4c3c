<!DOCTYPE qgis PUBLIC 'http://mrcc.com/qgis.dtd' 'SYSTEM'>
<!-- SPDX-License-Identifier: GPL-2.0-or-later -->
<qgis version="3.22.16" styleCategories="Symbology|Labeling|MapTips" labelsEnabled="1">
  <renderer-v2 type="RuleRenderer" symbollevels="0">
    <rules key="courses">
      <rule key="c0" symbol="0" label="Course 1, 7, 13 ..." filter="to_int(regexp_substr(&quot;route&quot;, '(\\d+)')) % 6 = 1"/>
      <rule key="c1" symbol="1" label="Course 2, 8, 14 ..." filter="to_int(regexp_substr(&quot;route&quot;, '(\\d+)')) % 6 = 2"/>
      <rule key="c2" symbol="2" label="Course 3, 9, 15 ..." filter="to_int(regexp_substr(&quot;route&quot;, '(\\d+)')) % 6 = 3"/>
      <rule key="c3" symbol="3" label="Course 4, 10, 16 ..." filter="to_int(regexp_substr(&quot;route&quot;, '(\\d+)')) % 6 = 4"/>
      <rule key="c4" symbol="4" label="Course 5, 11, 17 ..." filter="to_int(regexp_substr(&quot;route&quot;, '(\\d+)')) % 6 = 5"/>
      <rule key="c5" symbol="5" label="Course 6, 12, 18 ..." filter="to_int(regexp_substr(&quot;route&quot;, '(\\d+)')) % 6 = 0"/>
      <rule key="other" symbol="0" label="Other" filter="ELSE"/>
    </rules>
    <symbols>
      <symbol name="0" type="line" alpha="1">
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="line_color" type="QString" value="255,255,255,255"/>
            <Option name="line_width" type="QString" value="1.5"/>
          </Option>
        </layer>
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="capstyle" type="QString" value="flat"/>
            <Option name="line_color" type="QString" value="0,90,160,255"/>
            <Option name="line_width" type="QString" value="0.6"/>
          </Option>
        </layer>
        <layer class="MarkerLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="placement" type="QString" value="segmentcenter"/>
            <Option name="rotate" type="QString" value="1"/>
          </Option>
          <symbol name="@0@2" type="marker" alpha="1">
            <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
              <Option type="Map">
                <Option name="name" type="QString" value="filled_arrowhead"/>
                <Option name="size" type="QString" value="2.8"/>
                <Option name="color" type="QString" value="0,90,160,255"/>
                <Option name="outline_color" type="QString" value="255,255,255,255"/>
                <Option name="outline_width" type="QString" value="0.2"/>
              </Option>
            </layer>
          </symbol>
        </layer>
      </symbol>
      <symbol name="1" type="line" alpha="1">
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="line_color" type="QString" value="255,255,255,255"/>
            <Option name="line_width" type="QString" value="1.5"/>
          </Option>
        </layer>
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="capstyle" type="QString" value="flat"/>
            <Option name="line_color" type="QString" value="190,60,0,255"/>
            <Option name="line_width" type="QString" value="0.6"/>
            <Option name="use_custom_dash" type="QString" value="1"/>
            <Option name="customdash" type="QString" value="4;1.6"/>
          </Option>
        </layer>
        <layer class="MarkerLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="placement" type="QString" value="segmentcenter"/>
            <Option name="rotate" type="QString" value="1"/>
          </Option>
          <symbol name="@1@2" type="marker" alpha="1">
            <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
              <Option type="Map">
                <Option name="name" type="QString" value="filled_arrowhead"/>
                <Option name="size" type="QString" value="2.8"/>
                <Option name="color" type="QString" value="190,60,0,255"/>
                <Option name="outline_color" type="QString" value="255,255,255,255"/>
                <Option name="outline_width" type="QString" value="0.2"/>
              </Option>
            </layer>
          </symbol>
        </layer>
      </symbol>
      <symbol name="2" type="line" alpha="1">
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="line_color" type="QString" value="255,255,255,255"/>
            <Option name="line_width" type="QString" value="1.5"/>
          </Option>
        </layer>
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="capstyle" type="QString" value="flat"/>
            <Option name="line_color" type="QString" value="20,20,20,255"/>
            <Option name="line_width" type="QString" value="0.6"/>
            <Option name="use_custom_dash" type="QString" value="1"/>
            <Option name="customdash" type="QString" value="1.2;1.2"/>
          </Option>
        </layer>
        <layer class="MarkerLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="placement" type="QString" value="segmentcenter"/>
            <Option name="rotate" type="QString" value="1"/>
          </Option>
          <symbol name="@2@2" type="marker" alpha="1">
            <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
              <Option type="Map">
                <Option name="name" type="QString" value="filled_arrowhead"/>
                <Option name="size" type="QString" value="2.8"/>
                <Option name="color" type="QString" value="20,20,20,255"/>
                <Option name="outline_color" type="QString" value="255,255,255,255"/>
                <Option name="outline_width" type="QString" value="0.2"/>
              </Option>
            </layer>
          </symbol>
        </layer>
      </symbol>
      <symbol name="3" type="line" alpha="1">
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="line_color" type="QString" value="255,255,255,255"/>
            <Option name="line_width" type="QString" value="1.5"/>
          </Option>
        </layer>
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="capstyle" type="QString" value="flat"/>
            <Option name="line_color" type="QString" value="140,0,110,255"/>
            <Option name="line_width" type="QString" value="0.6"/>
            <Option name="use_custom_dash" type="QString" value="1"/>
            <Option name="customdash" type="QString" value="6;1.4;1.2;1.4"/>
          </Option>
        </layer>
        <layer class="MarkerLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="placement" type="QString" value="segmentcenter"/>
            <Option name="rotate" type="QString" value="1"/>
          </Option>
          <symbol name="@3@2" type="marker" alpha="1">
            <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
              <Option type="Map">
                <Option name="name" type="QString" value="filled_arrowhead"/>
                <Option name="size" type="QString" value="2.8"/>
                <Option name="color" type="QString" value="140,0,110,255"/>
                <Option name="outline_color" type="QString" value="255,255,255,255"/>
                <Option name="outline_width" type="QString" value="0.2"/>
              </Option>
            </layer>
          </symbol>
        </layer>
      </symbol>
      <symbol name="4" type="line" alpha="1">
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="line_color" type="QString" value="255,255,255,255"/>
            <Option name="line_width" type="QString" value="1.5"/>
          </Option>
        </layer>
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="capstyle" type="QString" value="flat"/>
            <Option name="line_color" type="QString" value="0,120,70,255"/>
            <Option name="line_width" type="QString" value="0.6"/>
            <Option name="use_custom_dash" type="QString" value="1"/>
            <Option name="customdash" type="QString" value="2.4;1.2"/>
          </Option>
        </layer>
        <layer class="MarkerLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="placement" type="QString" value="segmentcenter"/>
            <Option name="rotate" type="QString" value="1"/>
          </Option>
          <symbol name="@4@2" type="marker" alpha="1">
            <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
              <Option type="Map">
                <Option name="name" type="QString" value="filled_arrowhead"/>
                <Option name="size" type="QString" value="2.8"/>
                <Option name="color" type="QString" value="0,120,70,255"/>
                <Option name="outline_color" type="QString" value="255,255,255,255"/>
                <Option name="outline_width" type="QString" value="0.2"/>
              </Option>
            </layer>
          </symbol>
        </layer>
      </symbol>
      <symbol name="5" type="line" alpha="1">
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="line_color" type="QString" value="255,255,255,255"/>
            <Option name="line_width" type="QString" value="1.5"/>
          </Option>
        </layer>
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="capstyle" type="QString" value="flat"/>
            <Option name="line_color" type="QString" value="120,90,0,255"/>
            <Option name="line_width" type="QString" value="0.6"/>
            <Option name="use_custom_dash" type="QString" value="1"/>
            <Option name="customdash" type="QString" value="8;2"/>
          </Option>
        </layer>
        <layer class="MarkerLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="placement" type="QString" value="segmentcenter"/>
            <Option name="rotate" type="QString" value="1"/>
          </Option>
          <symbol name="@5@2" type="marker" alpha="1">
            <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
              <Option type="Map">
                <Option name="name" type="QString" value="filled_arrowhead"/>
                <Option name="size" type="QString" value="2.8"/>
                <Option name="color" type="QString" value="120,90,0,255"/>
                <Option name="outline_color" type="QString" value="255,255,255,255"/>
                <Option name="outline_width" type="QString" value="0.2"/>
              </Option>
            </layer>
          </symbol>
        </layer>
      </symbol>
    </symbols>
  </renderer-v2>
  <labeling type="simple">
    <settings>
      <text-style isExpression="1" fieldName="to_int(regexp_substr(&quot;route&quot;, '(\\d+)'))" fontFamily="Sans Serif" fontSize="7.5" fontSizeUnit="Point" fontWeight="75" textColor="20,20,20,255">
        <text-buffer bufferDraw="1" bufferSize="0.8" bufferSizeUnits="MM" bufferColor="255,255,255,255"/>
      </text-style>
      <placement placement="2" placementFlags="2" dist="0.8" distUnits="MM" priority="5" repeatDistance="35" repeatDistanceUnits="MM"/>
      <rendering drawLabels="1" obstacle="0"/>
    </settings>
  </labeling>
  <mapTip>&lt;b&gt;[% replace("route", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) %]&lt;/b&gt;: [% "legs" %] legs, [% round("length_m") %] m, [% round("minutes") %] min&lt;br&gt;[% replace("controls", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) %]&lt;br&gt;[% coalesce(replace("note", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')), '') %]</mapTip>
  <layerGeometryType>1</layerGeometryType>
</qgis>
