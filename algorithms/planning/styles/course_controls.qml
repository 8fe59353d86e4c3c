<!DOCTYPE qgis PUBLIC 'http://mrcc.com/qgis.dtd' 'SYSTEM'>
<!-- SPDX-License-Identifier: GPL-2.0-or-later -->
<qgis version="3.22.16" styleCategories="Symbology|Labeling|MapTips" labelsEnabled="1">
  <renderer-v2 type="RuleRenderer" symbollevels="0">
    <rules key="controls">
      <rule key="start" symbol="0" label="Start" filter="&quot;kind&quot; = 'start'"/>
      <rule key="control" symbol="1" label="Control" filter="&quot;letter&quot; is not null"/>
    </rules>
    <symbols>
      <symbol name="0" type="marker" alpha="1">
        <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="name" type="QString" value="triangle"/>
            <Option name="size" type="QString" value="4.6"/>
            <Option name="color" type="QString" value="255,255,255,255"/>
            <Option name="outline_color" type="QString" value="20,20,20,255"/>
            <Option name="outline_width" type="QString" value="0.6"/>
          </Option>
        </layer>
      </symbol>
      <symbol name="1" type="marker" alpha="1">
        <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="name" type="QString" value="circle"/>
            <Option name="size" type="QString" value="3"/>
            <Option name="color" type="QString" value="255,255,255,255"/>
            <Option name="outline_color" type="QString" value="20,20,20,255"/>
            <Option name="outline_width" type="QString" value="0.6"/>
          </Option>
        </layer>
      </symbol>
    </symbols>
  </renderer-v2>
  <labeling type="rule-based">
    <rules key="labels">
      <rule key="start" filter="&quot;kind&quot; = 'start'">
        <settings calloutType="simple">
          <text-style fieldName="label" isExpression="0" fontSize="8" fontSizeUnit="Point" fontFamily="DejaVu Sans" namedStyle="Bold" fontWeight="75" textColor="20,20,20,255">
            <text-buffer bufferDraw="1" bufferSize="0.9" bufferSizeUnits="MM" bufferColor="255,255,255,255"/>
          </text-style>
          <placement placement="0" dist="1.6" distUnits="MM" priority="9"/>
          <rendering drawLabels="1" obstacle="1"/>
        </settings>
      </rule>
      <rule key="control" filter="&quot;letter&quot; is not null">
        <settings calloutType="simple">
          <text-style fieldName="label" isExpression="0" fontSize="7.5" fontSizeUnit="Point" fontFamily="DejaVu Sans" namedStyle="Book" textColor="20,20,20,255">
            <text-buffer bufferDraw="1" bufferSize="0.8" bufferSizeUnits="MM" bufferColor="255,255,255,255"/>
          </text-style>
          <placement placement="0" dist="1.2" distUnits="MM" priority="6"/>
          <rendering drawLabels="1" obstacle="1"/>
        </settings>
      </rule>
    </rules>
  </labeling>
  <mapTip>&lt;b&gt;[% replace("name", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) %]&lt;/b&gt;, [% replace("route", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) %], number [% "number" %][% if("reach_m" is null, '', ': look within ' || round("reach_m", 1) || ' m') %]</mapTip>
  <layerGeometryType>0</layerGeometryType>
</qgis>
