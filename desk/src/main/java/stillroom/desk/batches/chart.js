// Draws pH over time with the product's band. The same figures stand in the table below it.

import { FONT, INKS, band, draw, figure, numbers } from '../shell/chart.js';

const place = document.getElementById('ph-chart');

const HOUR = 3600;
const STEPS = [300, 600, 900, 1800, HOUR, 2 * HOUR, 3 * HOUR, 6 * HOUR, 12 * HOUR, ...[1, 2, 4, 7, 14, 28, 56, 112, 365].map((days) => days * 24 * HOUR)];

function moment(seconds) {
  return new Date(seconds * 1000).toLocaleString('en-GB', { day: 'numeric', month: 'short', hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });
}

// At least an hour wide, so that no two ticks fall into the same minute; a little air on both sides.
function span(chart, first, last) {
  const air = Math.max((HOUR - (last - first)) / 2, (last - first) * 0.03);
  return [first - air, last + air];
}

function drawn() {
  const low = figure(place.dataset.low);
  const high = figure(place.dataset.high);
  const curves = [...place.querySelectorAll('[data-curve]')];
  const values = curves.map((curve) => numbers(curve.dataset.values));
  const all = values.flat().concat([low, high]).filter((value) => value !== null);
  const options = {
    scales: { x: { range: span }, y: { range: [Math.min(...all) - 0.3, Math.max(...all) + 0.3] } },
    series: [
      { label: 'Time', value: (chart, at) => (at === null ? '' : moment(at)) },
      ...curves.map((curve, i) => ({
        label: `pH, ${curve.dataset.curve}`, stroke: INKS[i % INKS.length], width: 2, spanGaps: true,
        points: { show: true, size: 9 },
      })),
    ],
    axes: [{ font: FONT, space: 130, incrs: STEPS, values: (chart, moments) => moments.map(moment) }, { font: FONT, label: 'pH', labelFont: FONT, size: 56 }],
    hooks: { drawClear: [band(low, high)] },
  };
  draw(place, 260, options, [numbers(place.dataset.times), ...values]);
}

if (place) {
  drawn();
}
