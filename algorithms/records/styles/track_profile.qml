<!DOCTYPE qgis PUBLIC 'http://mrcc.com/qgis.dtd' 'SYSTEM'>
<!-- SPDX-License-Identifier: GPL-2.0-or-later -->
<qgis version="3.22.16" styleCategories="Symbology|MapTips" labelsEnabled="0">
  <renderer-v2 type="singleSymbol" symbollevels="0">
    <symbols>
      <symbol name="0" type="marker" alpha="1">
        <layer class="SimpleMarker" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="name" type="QString" value="circle"/>
            <Option name="size" type="QString" value="0.8"/>
            <Option name="color" type="QString" value="90,90,90,255"/>
            <Option name="outline_style" type="QString" value="no"/>
          </Option>
        </layer>
      </symbol>
    </symbols>
  </renderer-v2>
  <mapTip>leg [% "leg" %], [% round("at_m") %] m along, [% round(abs("cross_m"), 1) %] m to the [% case when "cross_m" &lt; 0 then 'left' else 'right' end %]</mapTip>
  <layerGeometryType>0</layerGeometryType>
</qgis>
