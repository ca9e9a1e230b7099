// Behaviour that every page shares: safe swapping, refusals said in place, timers that are seen and heard.

if (window.Idiomorph) {
  // What a person is typing at this moment is never overwritten by an answer.
  Idiomorph.defaults.ignoreActiveValue = true;
}

const notice = document.getElementById('notice');

function say(sentence, isRefusal) {
  const paragraph = document.createElement('p');
  paragraph.textContent = sentence;
  notice.replaceChildren(paragraph);
  notice.classList.toggle('refusal', Boolean(isRefusal));
}

document.body.addEventListener('htmx:responseError', (event) => {
  const answer = event.detail.xhr;
  const isText = (answer.getResponseHeader('Content-Type') || '').startsWith('text/plain');
  say(isText ? answer.responseText : 'Stillroom could not take this. What you typed is still here; try again.', true);
});

document.body.addEventListener('htmx:sendError', () => {
  say('Stillroom does not answer. What you typed is still here; start it again and repeat the last step.', true);
});

// Swaps take only a part of the answered page; its notice comes along by hand.
document.body.addEventListener('htmx:beforeSwap', (event) => {
  const answered = new DOMParser().parseFromString(event.detail.serverResponse || '', 'text/html');
  const said = answered.querySelector('#notice p');
  const timers = answered.getElementById('timers');
  if (said) {
    say(said.textContent, event.detail.xhr.status >= 400);
  } else if (event.detail.xhr.status >= 400) {
    // What was said of the step before must not stand over one that was refused.
    notice.replaceChildren();
  }
  if (timers) {
    document.getElementById('timers').replaceChildren(...timers.childNodes);
    tick();
  }
});

// A press on a button that asks first.
document.body.addEventListener('submit', (event) => {
  const question = event.submitter && event.submitter.dataset.ask;
  if (question && !window.confirm(question)) {
    event.preventDefault();
    event.stopImmediatePropagation();
  }
}, true);

// Page parts that only make sense with behaviour are shown now; those that stand in for it are hidden by style.
document.documentElement.classList.add('with-behaviour');

let sound;
function chime() {
  try {
    sound = sound || new AudioContext();
    const tone = sound.createOscillator();
    const volume = sound.createGain();
    tone.frequency.value = 660;
    volume.gain.setValueAtTime(0.2, sound.currentTime);
    volume.gain.exponentialRampToValueAtTime(0.001, sound.currentTime + 1.2);
    tone.connect(volume).connect(sound.destination);
    tone.start();
    tone.stop(sound.currentTime + 1.2);
  } catch (silent) {
    // Without a sound device the timer still shows.
  }
}

function left(until) {
  return Math.round((Date.parse(until) - Date.now()) / 1000);
}

function words(seconds) {
  const over = seconds < 0;
  const whole = Math.abs(seconds);
  const hours = Math.floor(whole / 3600);
  const minutes = Math.floor((whole % 3600) / 60);
  const rest = String(whole % 60).padStart(2, '0');
  const time = hours > 0 ? `${hours} h ${String(minutes).padStart(2, '0')} min` : `${minutes}:${rest}`;
  return over ? `over by ${time}` : time;
}

let lastChime = 0;
function tick() {
  let due = false;
  for (const timer of document.querySelectorAll('[data-until]')) {
    const seconds = left(timer.dataset.until);
    const place = timer.querySelector('.timer-left') || timer;
    place.textContent = words(seconds);
    timer.classList.toggle('timer-due', seconds <= 0);
    due = due || (seconds <= 0 && timer.classList.contains('timer'));
  }
  if (due && Date.now() - lastChime > 15000) {
    lastChime = Date.now();
    chime();
  }
}
tick();
setInterval(tick, 1000);
