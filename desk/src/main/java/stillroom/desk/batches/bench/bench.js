// The bench: the deviation moves while one types, a doubtful lot says so, and the next field to fill has the focus.

import { offerCamera } from './scan.js';
import { offerLive } from './live.js';

function read(text) {
  const plain = text.trim().replace(',', '.').replace('\u2212', '-');
  return /^-?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
}

function shown(grams) {
  return String(Number(grams.toFixed(4))).replace('-', '\u2212');
}

// To a tenth, halves away from zero, as the page of what was made and the record round it.
function percent(off, target) {
  return (Math.round(Math.abs(off) / target * 1000 + 1e-9) / 10).toFixed(1);
}

function words(off, tolerance, target, check) {
  const share = target > 0 ? ` (${off < 0 ? '\u2212' : '+'}${percent(off, target)} %)` : '';
  if (Math.abs(off) <= tolerance + 1e-9 && Math.abs(off) > check + 1e-9) {
    return `Within the wide tolerance of q.s., but ${shown(Math.abs(off))} g ${off < 0 ? 'short' : 'over'}${share}: check the figure.`;
  }
  if (Math.abs(off) <= tolerance + 1e-9) {
    return `Within tolerance: ${off < 0 ? '\u2212' : '+'}${shown(Math.abs(off))} g${share}.`;
  }
  return off < 0 ? `${shown(-off)} g short${share}.` : `${shown(off)} g over${share}: beyond the tolerance.`;
}

function deviate(input) {
  const place = document.querySelector('.deviation');
  if (!place || input.id !== 'mass') {
    return;
  }
  const target = Number(place.dataset.target);
  const tolerance = Number(place.dataset.tolerance);
  const poured = Number(place.dataset.poured);
  const check = place.dataset.check === undefined ? Infinity : Number(place.dataset.check);
  const typed = read(input.value);
  const together = poured + (typed === null ? 0 : typed);
  const width = Math.max(target * 1.15, target + 2 * tolerance);
  const fill = place.querySelector('.bar-fill');
  const over = together > target + tolerance + 1e-9;
  fill.setAttribute('width', Math.max(0, Math.min(100, 100 * together / width)).toFixed(2));
  fill.classList.toggle('bar-over', over);
  place.classList.toggle('deviation-over', over);
  if (typed !== null) {
    place.querySelector('.deviation-words').textContent = words(together - target, tolerance, target, check);
  }
}

function doubt(select) {
  const hint = document.querySelector('[data-doubt-hint]');
  if (hint && select.id === 'lot') {
    const chosen = select.selectedOptions[0];
    hint.hidden = !(chosen && chosen.dataset.doubt);
  }
}

function settle() {
  offerCamera();
  offerLive();
  const wrong = document.querySelector('#act [aria-invalid="true"]');
  const first = wrong || document.querySelector('#act [data-first]');
  if (first) {
    first.focus({ preventScroll: true });
  }
  const lot = document.getElementById('lot');
  if (lot) {
    doubt(lot);
  }
  const mass = document.getElementById('mass');
  if (mass && mass.value) {
    deviate(mass);
  }
}

document.addEventListener('input', (event) => deviate(event.target));
document.addEventListener('change', (event) => doubt(event.target));
document.body.addEventListener('htmx:afterSettle', () => {
  settle();
  document.getElementById('act').scrollIntoView({ block: 'nearest' });
});
settle();
