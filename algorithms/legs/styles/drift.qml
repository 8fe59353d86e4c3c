<!DOCTYPE qgis PUBLIC 'http://mrcc.com/qgis.dtd' 'SYSTEM'>
<!-- SPDX-License-Identifier: GPL-2.0-or-later -->
<qgis version="3.22.16" styleCategories="Symbology|MapTips" labelsEnabled="0">
  <renderer-v2 type="singleSymbol" symbollevels="0">
    <symbols>
      <symbol name="0" type="fill" alpha="1">
        <layer class="SimpleFill" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="style" type="QString" value="no"/>
            <Option name="outline_color" type="QString" value="255,255,255,255"/>
            <Option name="outline_width" type="QString" value="1.1"/>
            <Option name="outline_style" type="QString" value="solid"/>
          </Option>
        </layer>
        <layer class="SimpleFill" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="style" type="QString" value="b_diagonal"/>
            <Option name="color" type="QString" value="20,20,20,90"/>
            <Option name="outline_color" type="QString" value="20,20,20,255"/>
            <Option name="outline_width" type="QString" value="0.4"/>
            <Option name="outline_style" type="QString" value="dash"/>
          </Option>
        </layer>
      </symbol>
    </symbols>
  </renderer-v2>
  <mapTip>&lt;b&gt;[% replace("route", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) %]&lt;/b&gt;, end of leg [% "leg" %]: 95 of 100 walks end within [% round("major_m") %] m by [% round("minor_m") %] m</mapTip>
</qgis>
