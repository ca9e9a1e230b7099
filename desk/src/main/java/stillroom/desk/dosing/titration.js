// Draws readings, fitted curve and dose over the grams of corrector. The same figures stand in the tables below it.

const place = document.getElementById('titration-chart');

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

function band(low, high) {
  return (chart) => {
    const top = chart.valToPos(high, 'y', true);
    const bottom = chart.valToPos(low, 'y', true);
    chart.ctx.fillStyle = '#d5e4df';
    chart.ctx.fillRect(chart.bbox.left, top, chart.bbox.width, bottom - top);
  };
}

function upright(grams, ink, words) {
  return (chart) => {
    if (grams === null) {
      return;
    }
    const x = chart.valToPos(grams, 'x', true);
    const { ctx, bbox } = chart;
    ctx.save();
    ctx.strokeStyle = ink;
    ctx.fillStyle = ink;
    ctx.lineWidth = 2;
    ctx.setLineDash([6, 4]);
    ctx.beginPath();
    ctx.moveTo(x, bbox.top);
    ctx.lineTo(x, bbox.top + bbox.height);
    ctx.stroke();
    ctx.font = `${14 * devicePixelRatio}px Lato, sans-serif`;
    ctx.fillText(words, x + 6, bbox.top + 16 * devicePixelRatio);
    ctx.restore();
  };
}

async function draw() {
  await Promise.all([
    load('link', { rel: 'stylesheet', href: '/assets/vendor/uplot-1.6.32.min.css' }),
    load('script', { src: '/assets/vendor/uplot-1.6.32.iife.min.js' }),
  ]);
  const data = place.dataset;
  const lines = ['curve', 'low', 'high', 'sample', 'bulk'].map((name) => numbers(data[name]));
  const dose = data.dose === '' ? null : Number(data.dose);
  const shown = lines.flat().filter((value) => value !== null);
  const font = '14px Lato, sans-serif';
  const dots = (label, ink, size) => ({
    label, stroke: ink, width: 0, points: { show: true, size, fill: ink }, paths: () => null,
  });
  const options = {
    width: place.clientWidth - 16,
    height: 320,
    scales: {
      x: { time: false },
      y: { range: [Math.min(...shown, Number(data.bandLow)) - 0.2, Math.max(...shown, Number(data.bandHigh)) + 0.2] },
    },
    series: [
      { label: 'g' },
      { label: 'fitted', stroke: '#1d5c56', width: 2, spanGaps: true, points: { show: false } },
      { label: 'low', stroke: '#7d8983', width: 1, dash: [4, 4], spanGaps: true, points: { show: false } },
      { label: 'high', stroke: '#7d8983', width: 1, dash: [4, 4], spanGaps: true, points: { show: false } },
      dots('sample', '#24507d', 9),
      dots('bulk', '#96281b', 12),
    ],
    axes: [{ font, label: data.axis, labelFont: font }, { font, label: 'pH', labelFont: font, size: 56 }],
    hooks: {
      drawClear: [band(Number(data.bandLow), Number(data.bandHigh))],
      draw: [upright(dose, '#7d4600', 'after the dose')],
    },
  };
  const chart = new window.uPlot(options, [numbers(data.grams), ...lines], place);
  window.addEventListener('resize', () => chart.setSize({ width: place.clientWidth - 16, height: 320 }));
}

if (place) {
  draw();
}
