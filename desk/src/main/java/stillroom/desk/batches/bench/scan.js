// The lot of a bottle: by camera where the browser reads codes, or by a hand scanner that types like a keyboard.

let stop = null;

function submit(code) {
  const field = document.getElementById('scan');
  if (field) {
    field.value = code;
    field.form.requestSubmit();
  }
}

async function camera(button) {
  const view = document.querySelector('[data-camera-view]');
  if (stop) {
    stop();
    return;
  }
  const stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' } });
  const detector = new window.BarcodeDetector({ formats: ['qr_code'] });
  let on = true;
  stop = () => {
    on = false;
    stop = null;
    stream.getTracks().forEach((track) => track.stop());
    view.hidden = true;
    button.textContent = 'Camera';
  };
  view.srcObject = stream;
  view.hidden = false;
  button.textContent = 'Stop the camera';
  await view.play();
  while (on && view.isConnected) {
    const found = await detector.detect(view);
    if (on && found.length > 0) {
      stop();
      submit(found[0].rawValue);
      return;
    }
    await new Promise((done) => setTimeout(done, 200));
  }
  if (stop) {
    stop();
  }
}

export function offerCamera() {
  document.querySelectorAll('[data-camera]').forEach((button) => {
    button.hidden = !('BarcodeDetector' in window && navigator.mediaDevices);
  });
}

document.addEventListener('click', (event) => {
  const button = event.target.closest('[data-camera]');
  if (button) {
    camera(button).catch(() => {
      button.disabled = true;
      button.textContent = 'No camera';
    });
  }
});

// A hand scanner types into whatever has the focus: letters in the weight are a code, never a weight.
document.addEventListener('keydown', (event) => {
  const input = event.target;
  if (event.key === 'Enter' && input.id === 'mass' && /[A-Za-z]/.test(input.value)) {
    event.preventDefault();
    const code = input.value.trim();
    input.value = '';
    submit(code);
  }
}, true);
