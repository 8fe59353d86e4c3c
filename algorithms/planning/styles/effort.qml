<!DOCTYPE qgis PUBLIC 'http://mrcc.com/qgis.dtd' 'SYSTEM'>
<!-- SPDX-License-Identifier: GPL-2.0-or-later -->
<qgis version="3.22.16" styleCategories="Symbology">
  <pipe>
    <rasterrenderer type="singlebandpseudocolor" band="1" alphaBand="-1" opacity="1" classificationMin="0" classificationMax="120">
      <minMaxOrigin>
        <limits>None</limits>
      </minMaxOrigin>
      <rastershader>
        <colorrampshader colorRampType="DISCRETE" classificationMode="1" clip="0" minimumValue="0" maximumValue="120">
          <item value="5" label="0–5 min" color="#f7f3ea" alpha="255"/>
          <item value="10" label="5–10 min" color="#efdfc1" alpha="255"/>
          <item value="15" label="10–15 min" color="#e5c69a" alpha="255"/>
          <item value="20" label="15–20 min" color="#d8ab78" alpha="255"/>
          <item value="30" label="20–30 min" color="#c68d5c" alpha="255"/>
          <item value="45" label="30–45 min" color="#ae7049" alpha="255"/>
          <item value="60" label="45–60 min" color="#8f5540" alpha="255"/>
          <item value="90" label="60–90 min" color="#6d3f3a" alpha="255"/>
          <item value="120" label="90–120 min" color="#4d2d34" alpha="255"/>
          <item value="inf" label="&gt; 120 min" color="#2e1d29" alpha="255"/>
        </colorrampshader>
      </rastershader>
    </rasterrenderer>
  </pipe>
</qgis>
