<!DOCTYPE qgis PUBLIC 'http://mrcc.com/qgis.dtd' 'SYSTEM'>
<!-- SPDX-License-Identifier: GPL-2.0-or-later -->
<qgis version="3.22.16" styleCategories="Symbology|MapTips" labelsEnabled="0">
  <renderer-v2 type="singleSymbol" symbollevels="0">
    <symbols>
      <symbol name="0" type="line" alpha="1">
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="line_color" type="QString" value="255,255,255,255"/>
            <Option name="line_width" type="QString" value="1.8"/>
          </Option>
        </layer>
        <layer class="SimpleLine" enabled="1" pass="0" locked="0">
          <Option type="Map">
            <Option name="line_color" type="QString" value="20,20,20,255"/>
            <Option name="line_width" type="QString" value="0.9"/>
            <Option name="line_style" type="QString" value="solid"/>
          </Option>
        </layer>
      </symbol>
    </symbols>
  </renderer-v2>
  <mapTip>[% replace("route", map('&amp;', '&amp;amp;', '&lt;', '&amp;lt;')) %]: [% round("minutes") %] min, [% "legs" %] legs</mapTip>
</qgis>
