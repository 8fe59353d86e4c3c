<!DOCTYPE qgis PUBLIC 'http://mrcc.com/qgis.dtd' 'SYSTEM'>
<!-- SPDX-License-Identifier: GPL-2.0-or-later -->
<qgis version="3.22.16" styleCategories="Symbology|Labeling|MapTips" labelsEnabled="1">
  <renderer-v2 type="RuleRenderer" symbollevels="0">
    <rules key="met">
      <rule key="beyond" symbol="0" label="Beyond the leg's end: too far" filter="&quot;role&quot; = 'beyond'"/>
      <rule key="crossed" symbol="1" label="Crossed" filter="&quot;role&quot; = 'crossed'"/>
      <rule key="passed" symbol="2" label="To the left or right" filter="ELSE"/>
    </rules>
    <symbols>
      <symbol name="0" type="marker" alpha="1">
        <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="name" type="QString" value="cross2"/>
            <Option name="size" type="QString" value="2.8"/>
            <Option name="color" type="QString" value="20,20,20,255"/>
            <Option name="outline_color" type="QString" value="20,20,20,255"/>
            <Option name="outline_width" type="QString" value="0.8"/>
          </Option>
        </layer>
      </symbol>
      <symbol name="1" type="marker" alpha="1">
        <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="name" type="QString" value="square"/>
            <Option name="size" type="QString" value="2.2"/>
            <Option name="color" type="QString" value="255,255,255,255"/>
            <Option name="outline_color" type="QString" value="20,20,20,255"/>
            <Option name="outline_width" type="QString" value="0.6"/>
          </Option>
        </layer>
      </symbol>
      <symbol name="2" type="marker" alpha="1">
        <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="name" type="QString" value="triangle"/>
            <Option name="size" type="QString" value="2.2"/>
            <Option name="color" type="QString" value="255,255,255,255"/>
            <Option name="outline_color" type="QString" value="20,20,20,255"/>
            <Option name="outline_width" type="QString" value="0.4"/>
          </Option>
        </layer>
      </symbol>
    </symbols>
  </renderer-v2>
  <labeling type="simple">
    <settings calloutType="simple">
      <text-style fieldName="&quot;paces&quot; || ': ' || &quot;feature&quot;" isExpression="1" fontSize="7" fontSizeUnit="Point" fontFamily="DejaVu Sans" namedStyle="Book" textColor="20,20,20,255" multilineHeight="1">
        <text-buffer bufferDraw="1" bufferSize="0.8" bufferSizeUnits="MM" bufferColor="255,255,255,255"/>
      </text-style>
      <placement placement="0" dist="1.2" distUnits="MM" priority="4"/>
      <rendering drawLabels="1" scaleVisibility="1" scaleMin="0" scaleMax="8000" obstacle="0"/>
    </settings>
  </labeling>
  <mapTip>&lt;b&gt;[% replace("route", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) %]&lt;/b&gt;, leg [% "leg" %], after [% "paces" %] paces: [% replace("feature", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) %] ([% replace("event", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) %])</mapTip>
</qgis>
