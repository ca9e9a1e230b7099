// Draws each preservative over pH with the product's own pH marked. The same figures stand in the table below.

import { FONT, INKS, band, draw, figure, numbers } from '../shell/chart.js';

function series(curve, i) {
  return {
    label: curve.dataset.curve, stroke: INKS[i % INKS.length], width: 2, spanGaps: true,
    dash: curve.dataset.kind === 'least' ? [6, 4] : undefined, points: { show: false },
  };
}

for (const place of document.querySelectorAll('[data-over-ph]')) {
  const curves = [...place.querySelectorAll('[data-curve]')];
  const values = curves.map((curve) => numbers(curve.dataset.values));
  const most = Math.max(...values.flat().filter((value) => value !== null), 0);
  const ink = (curve) => Number(curve.dataset.ink);
  const options = {
    scales: { x: { time: false }, y: { range: [0, most === 0 ? 1 : most * 1.05] } },
    series: [{ label: 'pH' }, ...curves.map((curve) => series(curve, ink(curve)))],
    axes: [{ font: FONT, label: 'pH', labelFont: FONT }, { font: FONT, label: place.dataset.axis, labelFont: FONT, size: 70 }],
    hooks: { drawClear: [band(figure(place.dataset.low), figure(place.dataset.high), 'x')] },
  };
  draw(place, 280, options, [numbers(place.dataset.overPh), ...values]);
}
