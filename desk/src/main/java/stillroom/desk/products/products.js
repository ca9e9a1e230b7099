// Working a formula by keyboard: Enter goes on to the next line, Alt and an arrow move the line.
import { form } from './saving.js';

let focusNext = null;

function press(id) {
  const button = document.getElementById(id);
  if (button && !button.disabled) {
    button.form.requestSubmit(button);
  }
}

// The material field of the next row; the row for something new is always the last of its phase.
function nextMaterial(line) {
  const all = [...document.querySelectorAll('.line .cell-material input')];
  return all[all.indexOf(line.querySelector('.cell-material input')) + 1];
}

document.addEventListener('keydown', (event) => {
  const row = event.target.closest && event.target.closest('form.formula .line, form.formula .step');
  if (!row) {
    return;
  }
  if (event.altKey && (event.key === 'ArrowUp' || event.key === 'ArrowDown')) {
    event.preventDefault();
    press(`${row.id}-${event.key === 'ArrowUp' ? 'up' : 'down'}`);
  } else if (event.key === 'Enter' && event.target.tagName === 'INPUT' && form()) {
    event.preventDefault();
    goOn(row, event.target);
  }
});

function goOn(row, field) {
  const next = row.classList.contains('line') && field.value !== '' && nextMaterial(row);
  if (next) {
    // It may be a spare row: shown from now on, and a row of its own as soon as it is saved.
    next.closest('.line').classList.add('line-now');
    next.focus();
  } else if (row.classList.contains('step-blank')) {
    focusNext = { after: row.id };
    field.blur();
  } else {
    field.dispatchEvent(new Event('change', { bubbles: true }));
  }
}

// A row's further choices close when work goes on elsewhere, and with Escape.
function closeOthers(target) {
  for (const open of document.querySelectorAll('.more[open]')) {
    if (!open.contains(target)) {
      open.open = false;
    }
  }
}
document.addEventListener('click', (event) => closeOthers(event.target));
document.addEventListener('focusin', (event) => closeOthers(event.target));
document.addEventListener('keydown', (event) => {
  const open = event.key === 'Escape' && event.target.closest && event.target.closest('.more[open]');
  if (open) {
    open.open = false;
    open.querySelector('summary').focus();
  }
});

// An amount is usually replaced as a whole.
document.addEventListener('focusin', (event) => {
  if (event.target.matches && event.target.matches('form.formula .amount')) {
    event.target.select();
  }
});

// A row that appears above must not push the field in which one is off the screen.
let wasSeen = false;
function onScreen(field) {
  const box = field.getBoundingClientRect();
  return box.bottom > 0 && box.top < window.innerHeight;
}
document.body.addEventListener('htmx:beforeSwap', () => {
  wasSeen = onScreen(document.activeElement);
});
document.body.addEventListener('htmx:afterSettle', () => {
  const field = document.activeElement;
  if (wasSeen && field.form && !onScreen(field)) {
    field.scrollIntoView({ block: 'nearest' });
  }
});

// After a line is removed, work goes on at the one that took its place.
document.addEventListener('submit', (event) => {
  const pressed = event.submitter;
  const row = pressed && pressed.id.endsWith('-remove') && pressed.closest('.line, .step');
  if (row) {
    const next = row.nextElementSibling || row.previousElementSibling;
    focusNext = next && { at: next.id };
  }
});

document.addEventListener('pointerdown', () => {
  focusNext = null;
});

document.body.addEventListener('htmx:afterSettle', () => {
  if (!focusNext) {
    return;
  }
  const row = document.getElementById(focusNext.after || focusNext.at);
  const place = focusNext.after && row ? row.nextElementSibling : row;
  const field = place && place.querySelector('input:not([type="hidden"])');
  if (field) {
    focusNext = null;
    field.focus();
  }
});
