<!DOCTYPE qgis PUBLIC 'http://mrcc.com/qgis.dtd' 'SYSTEM'>
<!-- SPDX-License-Identifier: GPL-2.0-or-later -->
<qgis version="3.22.16" styleCategories="Symbology|Labeling|MapTips" labelsEnabled="1">
  <renderer-v2 type="singleSymbol" symbollevels="0">
    <symbols>
      <symbol name="0" type="line" alpha="1">
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="line_color" type="QString" value="255,255,255,255"/>
            <Option name="line_width" type="QString" value="1.2"/>
          </Option>
        </layer>
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="line_color" type="QString" value="20,20,20,255"/>
            <Option name="line_width" type="QString" value="0.4"/>
          </Option>
        </layer>
      </symbol>
    </symbols>
  </renderer-v2>
  <labeling type="simple">
    <settings calloutType="simple">
      <text-style fieldName="coalesce(&quot;dial_text&quot;, '–') || '  ' || &quot;paces&quot;" isExpression="1" fontSize="7" fontSizeUnit="Point" fontFamily="DejaVu Sans" namedStyle="Book" textColor="20,20,20,255" multilineHeight="1">
        <text-buffer bufferDraw="1" bufferSize="0.8" bufferSizeUnits="MM" bufferColor="255,255,255,255"/>
      </text-style>
      <placement placement="2" placementFlags="2" dist="0.8" distUnits="MM" priority="6"/>
      <rendering drawLabels="1" scaleVisibility="1" scaleMin="0" scaleMax="8000" obstacle="0"/>
    </settings>
  </labeling>
  <mapTip>dial &lt;b&gt;[% coalesce(replace("dial_text", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')), '–') %]&lt;/b&gt;, [% "paces" %] paces</mapTip>
</qgis>
