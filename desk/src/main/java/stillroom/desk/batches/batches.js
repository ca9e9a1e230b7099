// Small behaviour of the batch pages: print this page, copy a text, forms that are asked anew while one types.

document.addEventListener('click', async (event) => {
  const button = event.target.closest('button');
  if (!button) {
    return;
  }
  if ('print' in button.dataset) {
    window.print();
  }
  if (button.dataset.copy) {
    const source = document.querySelector(button.dataset.copy);
    source.select();
    try {
      await navigator.clipboard.writeText(source.value);
      button.textContent = 'Copied';
    } catch (refused) {
      button.textContent = 'Selected: copy it with the keyboard';
    }
  }
});

// A form marked data-live asks again a moment after each change, one question at a time. An answer that is older than what
// was typed meanwhile is thrown away, so that it cannot overwrite it.
const PAUSE_MS = 200;
let changed = false;
let asking = false;
let pause;

function ask(form) {
  if (changed && !asking && form.isConnected) {
    changed = false;
    asking = true;
    window.htmx.trigger(form, 'edited');
  }
}

function edited(event) {
  const form = event.target.closest('form[data-live]');
  if (form) {
    changed = true;
    clearTimeout(pause);
    pause = setTimeout(() => ask(form), PAUSE_MS);
  }
}

// What was typed beside the live form stays, whatever the answer proposes there.
const typedBeside = new Map();
document.addEventListener('input', (event) => {
  if (event.target.id && !event.target.closest('form[data-live]')) {
    typedBeside.set(event.target.id, event.target.value);
  }
});
if (window.Idiomorph) {
  Idiomorph.defaults.callbacks.beforeNodeMorphed = (old, fresh) => {
    if (old instanceof HTMLInputElement && typedBeside.has(old.id)) {
      fresh.setAttribute('value', typedBeside.get(old.id));
      fresh.value = typedBeside.get(old.id);
    }
    return true;
  };
}

function isLive(event) {
  return event.target.matches && event.target.matches('form[data-live]');
}

document.addEventListener('input', edited);
document.addEventListener('change', edited);
document.body.addEventListener('htmx:beforeSwap', (event) => {
  if (event.detail.requestConfig.elt.matches('form[data-live]') && changed) {
    event.detail.shouldSwap = false;
  }
});
document.body.addEventListener('htmx:afterRequest', (event) => {
  if (isLive(event)) {
    asking = false;
    setTimeout(() => ask(document.querySelector('form[data-live]')), 0);
  }
});
