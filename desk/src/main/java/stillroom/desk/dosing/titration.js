// Draws readings, fitted curve and dose over the grams of corrector. The same figures stand in the tables below it.

import { FONT, INKS, band, draw, figure, numbers, upright } from '../shell/chart.js';

const place = document.getElementById('titration-chart');
const FAINT = '#7d8983';

function drawn() {
  const data = place.dataset;
  const lines = ['curve', 'low', 'high', 'sample', 'bulk'].map((name) => numbers(data[name]));
  const bandLow = Number(data.bandLow);
  const bandHigh = Number(data.bandHigh);
  const shown = lines.flat().filter((value) => value !== null);
  const line = (label, ink, more) => ({ label, stroke: ink, spanGaps: true, points: { show: false }, ...more });
  const dots = (label, ink, size) => ({
    label, stroke: ink, width: 0, points: { show: true, size, fill: ink }, paths: () => null,
  });
  const options = {
    scales: {
      x: { time: false },
      y: { range: [Math.min(...shown, bandLow) - 0.2, Math.max(...shown, bandHigh) + 0.2] },
    },
    series: [
      { label: 'g' },
      line('fitted', INKS[0], { width: 2 }),
      line('low', FAINT, { width: 1, dash: [4, 4] }),
      line('high', FAINT, { width: 1, dash: [4, 4] }),
      dots('sample', INKS[2], 9),
      dots('bulk', INKS[1], 12),
    ],
    axes: [{ font: FONT, label: data.axis, labelFont: FONT }, { font: FONT, label: 'pH', labelFont: FONT, size: 56 }],
    hooks: {
      drawClear: [band(bandLow, bandHigh)],
      draw: [upright(figure(data.dose), INKS[3], 'after the dose')],
    },
  };
  draw(place, 320, options, [numbers(data.grams), ...lines]);
}

if (place) {
  drawn();
}
