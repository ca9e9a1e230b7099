// Small behaviour of the batch pages: print this page, copy a text.

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
