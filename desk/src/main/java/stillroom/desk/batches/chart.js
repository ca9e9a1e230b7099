// Draws pH over time with the product's band. The same figures stand in the table below it.

const place = document.getElementById('ph-chart');

function numbers(text) {
  return text.split(',').map((part) => (part === '' ? null : Number(part)));
}

function load(tag, attributes) {
  return new Promise((resolve, reject) => {
    const element = Object.assign(document.createElement(tag), attributes);
    element.onload = resolve;
    element.onerror = reject;
    document.head.append(element);
  });
}

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

function band(low, high) {
  return (chart) => {
    const top = chart.valToPos(high, 'y', true);
    const bottom = chart.valToPos(low, 'y', true);
    chart.ctx.fillStyle = '#d5e4df';
    chart.ctx.fillRect(chart.bbox.left, top, chart.bbox.width, bottom - top);
  };
}

async function draw() {
  await Promise.all([
    load('link', { rel: 'stylesheet', href: '/assets/vendor/uplot-1.6.32.min.css' }),
    load('script', { src: '/assets/vendor/uplot-1.6.32.iife.min.js' }),
  ]);
  const low = place.dataset.low === '' ? null : Number(place.dataset.low);
  const high = place.dataset.high === '' ? null : Number(place.dataset.high);
  const curves = [...place.querySelectorAll('[data-curve]')];
  const values = curves.map((curve) => numbers(curve.dataset.values));
  const all = values.flat().filter((value) => value !== null).concat(low === null ? [] : [low, high]);
  const inks = ['#1d5c56', '#96281b', '#24507d', '#7d4600'];
  const font = '14px Lato, sans-serif';
  const options = {
    width: place.clientWidth - 16,
    height: 260,
    scales: { x: { range: span }, y: { range: [Math.min(...all) - 0.3, Math.max(...all) + 0.3] } },
    series: [
      { label: 'Time', value: (chart, at) => (at === null ? '' : moment(at)) },
      ...curves.map((curve, i) => ({
        label: `pH, ${curve.dataset.curve}`, stroke: inks[i % inks.length], width: 2, spanGaps: true,
        points: { show: true, size: 9 },
      })),
    ],
    axes: [{ font, space: 130, incrs: STEPS, values: (chart, moments) => moments.map(moment) }, { font, label: 'pH', labelFont: font, size: 56 }],
    hooks: low === null ? {} : { drawClear: [band(low, high)] },
  };
  const chart = new window.uPlot(options, [numbers(place.dataset.times), ...values], place);
  window.addEventListener('resize', () => chart.setSize({ width: place.clientWidth - 16, height: 260 }));
}

if (place) {
  draw();
}
