<!DOCTYPE qgis PUBLIC 'http://mrcc.com/qgis.dtd' 'SYSTEM'>
<!-- SPDX-License-Identifier: GPL-2.0-or-later -->
<qgis version="3.22.16" styleCategories="Symbology|Labeling|MapTips" labelsEnabled="1">
  <renderer-v2 type="RuleRenderer" symbollevels="0">
    <rules key="zones">
      <rule key="reliable" symbol="0" label="Compass serves" filter="&quot;zone&quot; = 'reliable'"/>
      <rule key="caution" symbol="1" label="Weak needle" filter="&quot;zone&quot; = 'caution'"/>
      <rule key="blackout" symbol="2" label="No compass" filter="&quot;zone&quot; = 'blackout'"/>
      <rule key="none" symbol="3" label="Not known" filter="ELSE"/>
    </rules>
    <symbols>
      <symbol name="0" type="marker" alpha="1">
        <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="name" type="QString" value="circle"/>
            <Option name="size" type="QString" value="2"/>
            <Option name="color" type="QString" value="120,0,90,255"/>
            <Option name="outline_color" type="QString" value="120,0,90,255"/>
            <Option name="outline_width" type="QString" value="0.5"/>
          </Option>
        </layer>
      </symbol>
      <symbol name="1" type="marker" alpha="1">
        <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="name" type="QString" value="triangle"/>
            <Option name="size" type="QString" value="2.8"/>
            <Option name="color" type="QString" value="255,255,255,255"/>
            <Option name="outline_color" type="QString" value="120,0,90,255"/>
            <Option name="outline_width" type="QString" value="0.5"/>
          </Option>
        </layer>
      </symbol>
      <symbol name="2" type="marker" alpha="1">
        <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="name" type="QString" value="cross2"/>
            <Option name="size" type="QString" value="2.8"/>
            <Option name="color" type="QString" value="255,255,255,255"/>
            <Option name="outline_color" type="QString" value="120,0,90,255"/>
            <Option name="outline_width" type="QString" value="0.5"/>
          </Option>
        </layer>
      </symbol>
      <symbol name="3" type="marker" alpha="1">
        <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="name" type="QString" value="circle"/>
            <Option name="size" type="QString" value="2"/>
            <Option name="color" type="QString" value="255,255,255,255"/>
            <Option name="outline_color" type="QString" value="120,0,90,255"/>
            <Option name="outline_width" type="QString" value="0.5"/>
          </Option>
        </layer>
      </symbol>
    </symbols>
  </renderer-v2>
  <labeling type="simple">
    <settings>
      <text-style fieldName="case when &quot;zone&quot; &lt;&gt; 'blackout' then format_number(abs(&quot;decl&quot;), 1) || '°' || case when round(&quot;decl&quot;, 1) &lt; 0 then ' W' when round(&quot;decl&quot;, 1) &gt; 0 then ' E' else '' end end" isExpression="1" fontFamily="Sans Serif" fontSize="9" fontSizeUnit="Point" fontWeight="75" textColor="70,0,50,255" textOpacity="1">
        <text-buffer bufferDraw="1" bufferSize="0.8" bufferSizeUnits="MM" bufferColor="255,255,255,255" bufferOpacity="1" bufferJoinStyle="128" bufferNoFill="1"/>
      </text-style>
      <placement placement="0" dist="1.2" distUnits="MM" priority="8"/>
      <rendering drawLabels="1" obstacle="0"/>
    </settings>
  </labeling>
  <mapTip>declination &lt;b&gt;[% round("decl", 1) %]°&lt;/b&gt;, from grid north [% round("grid_mag", 1) %]°, in a year [% round("decl_year", 2) %]°&lt;br&gt;[% replace("zone", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) %]</mapTip>
  <layerGeometryType>0</layerGeometryType>
</qgis>
