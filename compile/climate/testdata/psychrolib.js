// Prints what psychrolib 1.1.1 (MIT) makes of a grid of temperatures and relative
// humidities, as JSON rows of [t, rh, p, es, dew point, humidity ratio].
// Run with NODE_PATH pointing at the node_modules that holds psychrolib.
const p = require('psychrolib');
p.SetUnitSystem(p.SI);
const rows = [];
for (const pressure of [101325, 84556]) {
  for (let t = 0; t <= 45; t++) {
    for (let rh = 5; rh <= 100; rh += 5) {
      rows.push([t, rh, pressure, p.GetSatVapPres(t), p.GetTDewPointFromRelHum(t, rh / 100),
        p.GetHumRatioFromRelHum(t, rh / 100, pressure)]);
    }
  }
}
console.log(JSON.stringify(rows));
