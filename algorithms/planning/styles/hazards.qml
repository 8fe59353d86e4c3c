<!DOCTYPE qgis PUBLIC 'http://mrcc.com/qgis.dtd' 'SYSTEM'>
<!-- SPDX-License-Identifier: GPL-2.0-or-later -->
<qgis version="3.22.16" styleCategories="Symbology|Labeling|MapTips" labelsEnabled="1">
  <renderer-v2 type="singleSymbol" symbollevels="1">
    <symbols>
      <symbol name="0" type="line" alpha="1">
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="capstyle" type="QString" value="flat"/>
            <Option name="line_color" type="QString" value="20,20,20,255"/>
            <Option name="line_width" type="QString" value="2.4"/>
          </Option>
        </layer>
        <layer class="SimpleLine" enabled="1" pass="1" locked="0">
          <Option type="Map">
            <Option name="capstyle" type="QString" value="flat"/>
            <Option name="line_color" type="QString" value="255,214,0,255"/>
            <Option name="line_width" type="QString" value="1.6"/>
            <Option name="customdash" type="QString" value="2;1.4"/>
            <Option name="customdash_unit" type="QString" value="MM"/>
            <Option name="use_custom_dash" type="QString" value="1"/>
          </Option>
        </layer>
      </symbol>
    </symbols>
  </renderer-v2>
  <labeling type="simple">
    <settings calloutType="simple">
      <text-style fieldName="'! ' || &quot;hazard&quot;" isExpression="1" fontSize="7" fontSizeUnit="Point" fontFamily="DejaVu Sans" namedStyle="Bold" textColor="20,20,20,255" multilineHeight="1">
        <text-buffer bufferDraw="1" bufferSize="0.8" bufferSizeUnits="MM" bufferColor="255,255,255,255"/>
      </text-style>
      <placement placement="2" placementFlags="14" dist="1.4" distUnits="MM" overrunDistance="25" overrunDistanceUnit="MM" priority="7"/>
      <rendering drawLabels="1" scaleVisibility="1" scaleMin="0" scaleMax="25000" obstacle="0"/>
    </settings>
  </labeling>
  <mapTip>&lt;b&gt;[% replace("route", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) %]&lt;/b&gt;, leg [% "leg" %]: [% replace("advice", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) %]</mapTip>
</qgis>
