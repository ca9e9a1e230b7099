// The weight as a balance sends it: asked for at the program where the line is this computer's, else read by the browser.
// What a line means is said by the balance's pattern and decided in one place, by the program.

const readers = new Map();

function say(box, words) {
  box.querySelector('[data-live-words]').textContent = words;
}

function take(box, reading) {
  if (!reading.grams) {
    say(box, 'Nothing that can be read came. Type the weight.');
    return;
  }
  if (!reading.stable) {
    say(box, `${reading.grams} g, still moving`);
    return;
  }
  const mass = document.getElementById('mass');
  mass.value = reading.grams;
  mass.dispatchEvent(new Event('input', { bubbles: true }));
  say(box, `${reading.grams} g, at rest`);
}

async function meaning(name, line) {
  const answer = await fetch(`/scales/${encodeURIComponent(name)}/line`, { method: 'POST', body: new URLSearchParams({ line }) });
  return answer.ok ? answer.json() : {};
}

// Keeps the newest whole line; what has no line end yet is not read.
async function listen(name, baud) {
  const port = await navigator.serial.requestPort();
  await port.open({ baudRate: baud });
  const state = { line: '', rest: '' };
  readers.set(name, state);
  const decoder = new TextDecoder('latin1');
  const reader = port.readable.getReader();
  (async () => {
    for (;;) {
      const { value, done } = await reader.read();
      if (done) {
        readers.delete(name);
        return;
      }
      const parts = (state.rest + decoder.decode(value, { stream: true })).split(/[\r\n]+/);
      state.rest = parts.pop().slice(0, 400);
      const whole = parts.filter((part) => part.trim());
      state.line = whole.length ? whole[whole.length - 1] : state.line;
    }
  })().catch(() => readers.delete(name));
}

async function read(box) {
  const name = box.dataset.liveBalance;
  if (box.dataset.here) {
    say(box, 'Reading');
    const answer = await fetch(`/scales/${encodeURIComponent(name)}/weight`);
    take(box, answer.ok ? await answer.json() : {});
    return;
  }
  if (!readers.has(name)) {
    await listen(name, Number(box.dataset.baud));
    await new Promise((done) => setTimeout(done, 700));
  }
  take(box, await meaning(name, readers.get(name).line));
}

export function offerLive() {
  document.querySelectorAll('[data-live-balance]').forEach((box) => {
    box.hidden = !(box.dataset.here || 'serial' in navigator);
  });
}

document.addEventListener('click', (event) => {
  const button = event.target.closest('[data-live-read]');
  if (button) {
    const box = button.closest('[data-live-balance]');
    read(box).catch(() => say(box, 'The line could not be opened. Type the weight.'));
  }
});
