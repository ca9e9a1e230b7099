// What a person reads on the page: the name of a control, and where it stands.
(() => {
  const words = (element) => (element.innerText ?? element.textContent ?? '').replace(/\s+/g, ' ').trim();
  const byId = (ids) => ids.split(/\s+/).map((id) => document.getElementById(id)).filter(Boolean).map(words).join(' ');
  const given = (element) => element.getAttribute('aria-label') || byId(element.getAttribute('aria-labelledby') || '');
  const fits = (said, wanted) => (wanted.endsWith('…') ? said.startsWith(wanted.slice(0, -1)) : said === wanted);

  const nameOf = (element) =>
    given(element) || (element.labels && element.labels.length ? words(element.labels[0]) : words(element));

  // A place is a region with that name or heading, or the row that shows or holds these words.
  const isPlace = (element, place) =>
    fits(given(element), place)
    || [...element.children].some((child) => /^H[1-6]$/.test(child.tagName) && fits(words(child), place))
    || (element.matches('li, tr')
      && [...element.querySelectorAll('strong, input')].some((part) => fits(part.value ?? words(part), place)));

  const liesIn = (element, place) => {
    for (let around = element.parentElement; around; around = around.parentElement) {
      if (isPlace(around, place)) {
        return true;
      }
    }
    return place === '';
  };

  const kinds = {
    press: 'a[href], button, summary',
    tick: '[type="checkbox"], [type="radio"]',
    write: 'input:not([type="hidden"], [type="checkbox"], [type="radio"]), textarea',
    choose: 'select',
  };
  const is = (element, kind, name, place) =>
    element.matches(kinds[kind]) && fits(nameOf(element), name) && liesIn(element, place);

  window.bench = {
    nameOf,
    is,
    find: (kind, name, place) =>
      [...document.querySelectorAll(kinds[kind])]
        .find((one) => one.checkVisibility() && !one.disabled && is(one, kind, name, place)),
  };
})();
