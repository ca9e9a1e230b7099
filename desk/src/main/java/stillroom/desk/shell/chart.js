// What all charts share: reading numbers from the page, loading the plotter once, drawing a band and an upright line.
// The same figures always stand in a table beside the chart.

export const INKS = ['#1d5c56', '#96281b', '#24507d', '#7d4600', '#5b3a75', '#3d5c1d'];
export const FONT = '14px Lato, sans-serif';
const BAND = '#d5e4df';

/** Comma-separated numbers; an empty place is a gap. */
export function numbers(text) {
  return text.split(',').map(figure);
}

/** One number, or null for nothing. */
export function figure(text) {
  return text === undefined || text === '' ? null : Number(text);
}

function load(tag, attributes) {
  return new Promise((resolve, reject) => {
    const element = Object.assign(document.createElement(tag), attributes);
    element.onload = resolve;
    element.onerror = reject;
    document.head.append(element);
  });
}

let plotter = null;

function loaded() {
  plotter ??= Promise.all([
    load('link', { rel: 'stylesheet', href: '/assets/vendor/uplot-1.6.32.min.css' }),
    load('script', { src: '/assets/vendor/uplot-1.6.32.iife.min.js' }),
  ]);
  return plotter;
}

/** Shades the span between two values of an axis; nothing where one of them is null. */
export function band(low, high, axis = 'y') {
  return (chart) => {
    if (low === null || high === null) {
      return;
    }
    const { ctx, bbox } = chart;
    const from = chart.valToPos(low, axis, true);
    const to = chart.valToPos(high, axis, true);
    ctx.fillStyle = BAND;
    if (axis === 'y') {
      ctx.fillRect(bbox.left, to, bbox.width, from - to);
    } else {
      ctx.fillRect(from, bbox.top, Math.max(to - from, 2), bbox.height);
    }
  };
}

/** A dashed upright line with words beside it; nothing where its place is null. */
export function upright(at, ink, words) {
  return (chart) => {
    if (at === null) {
      return;
    }
    const x = chart.valToPos(at, 'x', true);
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

/** Draws into a place and follows its width. */
export async function draw(place, height, options, data) {
  await loaded();
  const size = () => ({ width: place.clientWidth - 16, height });
  const chart = new window.uPlot({ ...size(), ...options }, data, place);
  window.addEventListener('resize', () => chart.setSize(size()));
  return chart;
}
