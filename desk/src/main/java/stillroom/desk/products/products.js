// The formula editor saves by itself. What this adds: a change typed while an answer is on its way is not overwritten
// by it, buttons act only when they are pressed, and lines can be worked with Enter and Alt + arrows.

const form = () => document.getElementById('formula');
let sent = new Map();
let focusNext = null;

function stateOf(field) {
  return field.type === 'checkbox' ? String(field.checked) : field.value;
}

document.body.addEventListener('htmx:configRequest', (event) => {
  const asking = event.target.closest('form.formula');
  if (!asking) {
    return;
  }
  // The address follows from what happened, never from where the focus happens to rest.
  const pressed = event.detail.triggeringEvent && event.detail.triggeringEvent.submitter;
  event.detail.path = (pressed && pressed.getAttribute('formaction')) || asking.getAttribute('action');
  sent = new Map([...asking.elements].filter((field) => field.id).map((field) => [field.id, stateOf(field)]));
});

// Whether a field holds something that the request under way did not yet carry.
function isNewer(field) {
  return stateOf(field) !== (sent.has(field.id) ? sent.get(field.id) : field.defaultValue);
}

function keepNewer(old, fresh) {
  if (!(old instanceof Element) || !old.matches('.formula [name][id]') || !isNewer(old)) {
    return;
  }
  if (old.tagName === 'INPUT') {
    fresh.setAttribute('value', old.value);
    fresh.value = old.value;
  } else if (old.tagName === 'SELECT') {
    for (const option of fresh.options) {
      option.toggleAttribute('selected', option.value === old.value);
      option.selected = option.value === old.value;
    }
  }
}

if (window.Idiomorph) {
  Idiomorph.defaults.callbacks.beforeNodeMorphed = (old, fresh) => {
    keepNewer(old, fresh);
    if (old instanceof Element && old.classList.contains('line-now') && fresh.classList.contains('line-spare')) {
      fresh.classList.add('line-now');
    }
    return true;
  };
  // What the person opened stays open.
  Idiomorph.defaults.callbacks.beforeAttributeUpdated = (name, node) => !(name === 'open' && node.tagName === 'DETAILS');
}

// The page says "saved" only when nothing typed is still on its way, and leaves only then.
let unsaved = false;
let stillTyped = false;
let goingTo = null;
function sayUnsaved() {
  const saved = form() && document.getElementById('saved');
  if (saved) {
    unsaved = true;
    saved.textContent = 'Not saved yet.';
  }
}
for (const kind of ['input', 'change']) {
  document.addEventListener(kind, (event) => event.target.closest('form.formula') && sayUnsaved());
}
document.body.addEventListener('htmx:beforeSwap', () => {
  stillTyped = Boolean(form()) && [...form().elements].some((field) => field.id && field.name && isNewer(field));
});
document.body.addEventListener('htmx:afterSwap', (event) => {
  unsaved = stillTyped;
  if (stillTyped) {
    sayUnsaved();
  } else if (goingTo && event.detail.xhr.status < 400) {
    window.location.assign(goingTo);
  } else {
    goingTo = null;
  }
});
document.addEventListener('click', (event) => {
  const link = event.target.closest('a[href]');
  if (link && unsaved && form() && !link.getAttribute('href').startsWith('#') && goingTo !== link.href) {
    event.preventDefault();
    goingTo = link.href;
  }
});

// Amounts are saved while they are typed, as soon as the hand rests.
let rest;
document.addEventListener('input', (event) => {
  if (event.target.closest('form.formula .amount')) {
    clearTimeout(rest);
    rest = setTimeout(() => form() && htmx.trigger(form(), 'edited'), 500);
  }
});

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
    const field = event.target;
    field.dispatchEvent(new Event('blur'));
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

// After a line is removed, work goes on at the one that took its place.
document.addEventListener('submit', (event) => {
  const pressed = event.submitter;
  const row = pressed && pressed.id.endsWith('-remove') && pressed.closest('.line, .step');
  if (row) {
    const next = row.nextElementSibling || row.previousElementSibling;
    focusNext = next && { at: next.id };
  }
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

// What was refused before is settled once the same form was taken.
document.body.addEventListener('htmx:afterSwap', (event) => {
  const notice = document.getElementById('notice');
  if (event.target.id === 'work' && event.detail.xhr.status < 400 && notice.classList.contains('refusal')) {
    notice.classList.remove('refusal');
    notice.replaceChildren();
  }
});
