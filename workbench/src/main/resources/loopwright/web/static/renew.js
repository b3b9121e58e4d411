// Makes a part of the page equal to a fresh one. What is the same stays where it is, with its focus, with what was typed
// and not sent, and with whatever a hand is holding.
export function renew(old, fresh) {
  if (old.isEqualNode(fresh)) {
    return;
  }
  if (old.nodeName !== fresh.nodeName || old.id !== fresh.id) {
    old.replaceWith(fresh);
    return;
  }
  if (old.nodeType !== Node.ELEMENT_NODE) {
    old.data = fresh.data;
    return;
  }
  renewAttributes(old, fresh);
  const ahead = [...fresh.childNodes];
  [...old.childNodes].forEach((child, i) => (i < ahead.length ? renew(child, ahead[i]) : child.remove()));
  old.append(...ahead.slice(old.childNodes.length));
  if (old.nodeName === "TEXTAREA") {
    old.value = old.defaultValue;
  }
}

// Whether a part is folded open is the reader's own.
function renewAttributes(old, fresh) {
  [...old.attributes].forEach(({ name }) => fresh.hasAttribute(name) || name === "open" || old.removeAttribute(name));
  [...fresh.attributes].forEach(({ name, value }) => {
    if (old.getAttribute(name) !== value) {
      old.setAttribute(name, value);
      if (name === "value") {
        old.value = value;
      }
    }
  });
  if (old.nodeName === "OPTION" && old.defaultSelected !== old.selected) {
    old.selected = old.defaultSelected;
  }
}
