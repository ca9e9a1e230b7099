// The weight as a balance sends it: asked for at the program where the line is this computer's, else read by the browser.
// What a line means is said by the balance's pattern and decided in one place, by the program.

const readers = new Map();
const PATIENCE = 1500;

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

// Keeps the newest whole line. What has no line end yet is not read, and neither is the first line: one may have come in
// the middle of a longer number.
async function follow(port, state) {
  const decoder = new TextDecoder('latin1');
  const reader = port.readable.getReader();
  try {
    for (;;) {
      const { value, done } = await reader.read();
      if (done) {
        return;
      }
      const parts = (state.rest + decoder.decode(value, { stream: true })).split(/[\r\n]+/);
      state.rest = parts.pop().slice(0, 400);
      const whole = parts.slice(state.begun ? 0 : 1).filter((part) => part.trim());
      state.begun = state.begun || parts.length > 0;
      state.line = whole.length ? whole[whole.length - 1] : state.line;
    }
  } finally {
    reader.releaseLock();
    await port.close();
  }
}

async function listen(name, baud) {
  const port = await navigator.serial.requestPort();
  await port.open({ baudRate: baud });
  const state = { line: '', rest: '', begun: false };
  readers.set(name, state);
  follow(port, state).catch(() => {}).then(() => readers.delete(name));
}

// A line that comes after the button was pressed: what stood before may be the weight of something else.
async function fresh(name) {
  const state = readers.get(name);
  state.line = '';
  for (let waited = 0; waited < PATIENCE && readers.has(name) && !state.line; waited += 50) {
    await new Promise((done) => setTimeout(done, 50));
  }
  return { line: state.line, closed: !readers.has(name) };
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
  }
  say(box, 'Reading');
  const { line, closed } = await fresh(name);
  if (!line && closed) {
    say(box, 'The line was closed. Type the weight.');
    return;
  }
  take(box, line ? await meaning(name, line) : {});
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
