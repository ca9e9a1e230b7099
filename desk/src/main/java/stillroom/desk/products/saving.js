// The formula editor saves by itself: one request at a time, what is typed meanwhile is not overwritten by the answer,
// and buttons act only when they are pressed.

/** The form, where it may save by itself. */
export const form = () => document.getElementById('formula');
let sent = new Map();

function stateOf(field) {
  return field.type === 'checkbox' ? String(field.checked) : field.value;
}

document.body.addEventListener('htmx:configRequest', (event) => {
  const asking = event.target.closest('form.formula');
  if (!asking) {
    return;
  }
  asked = false;
  // The address follows from what happened, never from where the focus happens to rest.
  const pressed = event.detail.triggeringEvent && event.detail.triggeringEvent.submitter;
  event.detail.path = (pressed && pressed.getAttribute('formaction')) || asking.getAttribute('action');
  sent = new Map([...asking.elements].filter((field) => field.id).map((field) => [field.id, stateOf(field)]));
});

// Whether a field holds something that the request under way did not yet carry.
function isNewer(field) {
  return stateOf(field) !== (sent.has(field.id) ? sent.get(field.id) : field.defaultValue);
}

// A list is left alone while it has the focus, so that nothing jumps under the hand; what the answer made of it still holds.
function followAnswer(list, fresh) {
  for (const option of list.options) {
    option.toggleAttribute('selected', option.value === fresh.value);
    option.selected = option.value === fresh.value;
  }
}

function keepNewer(old, fresh) {
  if (old === document.activeElement && old.matches('.formula select[id]') && fresh.tagName === 'SELECT' && !isNewer(old)) {
    followAnswer(old, fresh);
  }
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

// Saves as soon as no other request is under way. One that waits already takes everything along.
let asked = false;
let rest;
function save() {
  clearTimeout(rest);
  if (form() && !asked) {
    asked = true;
    htmx.trigger(form(), 'edited');
  }
}
document.addEventListener('change', (event) => {
  if (event.target.closest('form.formula') && event.target !== browsing) {
    save();
  }
});
// Keys run through a list one choice after the other, and each would already rearrange the formula; only the one at
// which they stop is meant, known when the field is left or Enter pressed.
let browsing = null;
function settled() {
  const list = browsing;
  browsing = null;
  if (list && list.isConnected && isNewer(list)) {
    save();
  }
}
document.addEventListener('keydown', (event) => {
  if (event.key === 'Enter') {
    settled();
  } else if (event.target.matches('form.formula select') && event.key !== 'Tab') {
    browsing = event.target;
  }
});
document.addEventListener('focusout', (event) => event.target === browsing && settled());
document.addEventListener('pointerdown', settled);
// Amounts are saved while they are typed, as soon as the hand rests.
document.addEventListener('input', (event) => {
  if (event.target.closest('form.formula .amount')) {
    clearTimeout(rest);
    rest = setTimeout(save, 500);
  }
});

document.body.addEventListener('htmx:beforeSwap', () => {
  stillTyped = Boolean(form()) && [...form().elements].some((field) => field.id && field.name && isNewer(field));
});
document.body.addEventListener('htmx:afterSwap', (event) => {
  asked = false;
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
    save();
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
