<!DOCTYPE qgis PUBLIC 'http://mrcc.com/qgis.dtd' 'SYSTEM'>
<!-- SPDX-License-Identifier: GPL-2.0-or-later -->
<qgis version="3.22.16" styleCategories="Symbology|Labeling|MapTips" labelsEnabled="1">
  <renderer-v2 type="RuleRenderer" symbollevels="1">
    <rules key="lines">
      <rule key="reliable" symbol="0" label="Magnetic north line" filter="ELSE"/>
      <rule key="caution" symbol="1" label="Magnetic north line, weak needle" filter="&quot;zone&quot; = 'caution'"/>
    </rules>
    <symbols>
      <symbol name="0" type="line" alpha="1">
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="capstyle" type="QString" value="round"/>
            <Option name="line_color" type="QString" value="255,255,255,200"/>
            <Option name="line_width" type="QString" value="0.8"/>
          </Option>
        </layer>
        <layer class="SimpleLine" enabled="1" pass="1" locked="0">
          <Option type="Map">
            <Option name="capstyle" type="QString" value="flat"/>
            <Option name="line_color" type="QString" value="120,0,90,255"/>
            <Option name="line_width" type="QString" value="0.3"/>
          </Option>
        </layer>
        <layer class="MarkerLine" enabled="1" pass="2" locked="0">
          <Option type="Map">
            <Option name="placement" type="QString" value="lastvertex"/>
            <Option name="rotate" type="QString" value="1"/>
          </Option>
          <symbol name="@0@2" type="marker" alpha="1">
            <layer class="EllipseMarker" enabled="1" pass="0" locked="0">
              <Option type="Map">
                <Option name="symbol_name" type="QString" value="triangle"/>
                <Option name="symbol_width" type="QString" value="1.8"/>
                <Option name="symbol_height" type="QString" value="3.6"/>
                <Option name="angle" type="QString" value="90"/>
                <Option name="offset" type="QString" value="0,1.8"/>
                <Option name="color" type="QString" value="120,0,90,255"/>
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
            <Option name="line_color" type="QString" value="255,255,255,200"/>
            <Option name="line_width" type="QString" value="0.8"/>
          </Option>
        </layer>
        <layer class="SimpleLine" enabled="1" pass="1" locked="0">
          <Option type="Map">
            <Option name="capstyle" type="QString" value="flat"/>
            <Option name="use_custom_dash" type="QString" value="1"/>
            <Option name="customdash" type="QString" value="4;1.5"/>
            <Option name="line_color" type="QString" value="120,0,90,255"/>
            <Option name="line_width" type="QString" value="0.3"/>
          </Option>
        </layer>
        <layer class="MarkerLine" enabled="1" pass="2" locked="0">
          <Option type="Map">
            <Option name="placement" type="QString" value="lastvertex"/>
            <Option name="rotate" type="QString" value="1"/>
          </Option>
          <symbol name="@1@2" type="marker" alpha="1">
            <layer class="EllipseMarker" enabled="1" pass="0" locked="0">
              <Option type="Map">
                <Option name="symbol_name" type="QString" value="triangle"/>
                <Option name="symbol_width" type="QString" value="1.8"/>
                <Option name="symbol_height" type="QString" value="3.6"/>
                <Option name="angle" type="QString" value="90"/>
                <Option name="offset" type="QString" value="0,1.8"/>
                <Option name="color" type="QString" value="120,0,90,255"/>
                <Option name="outline_color" type="QString" value="255,255,255,255"/>
                <Option name="outline_width" type="QString" value="0.3"/>
              </Option>
            </layer>
          </symbol>
        </layer>
      </symbol>
    </symbols>
  </renderer-v2>
  <labeling type="simple">
    <settings>
      <text-style fieldName="label" isExpression="0" fontFamily="Sans Serif" fontSize="7" fontSizeUnit="Point" textColor="120,0,90,255" textOpacity="1">
        <text-buffer bufferDraw="1" bufferSize="0.7" bufferSizeUnits="MM" bufferColor="255,255,255,255" bufferOpacity="1" bufferJoinStyle="128" bufferNoFill="1"/>
      </text-style>
      <placement placement="2" placementFlags="2" dist="0.6" distUnits="MM" lineAnchorPercent="0.2" lineAnchorType="0" overrunDistance="0" overrunDistanceUnit="MM" priority="3"/>
      <rendering drawLabels="1" obstacle="0"/>
    </settings>
  </labeling>
  <mapTip>Line [% replace("line", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) %]: [% replace("label", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) %]</mapTip>
  <layerGeometryType>1</layerGeometryType>
</qgis>
