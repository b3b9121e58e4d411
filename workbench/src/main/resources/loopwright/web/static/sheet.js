// What entry.js and drill.js share, loaded before them on a page and standing above them in a sheet's file: parts of a form,
// what is kept in this browser, and how it is handed over.
globalThis.loopwrightSheet = (() => {
  "use strict";
  const lost = document.getElementById("lost");
  const drawn = () => Array.from(crypto.getRandomValues(new Uint8Array(9)), (b) => b.toString(36).padStart(2, "0")).join("").slice(0, 14);
  const today = () => {
    const now = new Date();
    return new Date(now - now.getTimezoneOffset() * 60000).toISOString().slice(0, 10);
  };

  // What is written down is kept in this browser's database. Its local storage is no place for it: a sheet that is opened
  // from the disk finds that empty after some reloads, and what is written then is lost (docs/validation.md).
  const opened = new Promise((done, failed) => {
    const request = indexedDB.open("loopwright", 1);
    request.onupgradeneeded = () => request.result.createObjectStore("kept");
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error);
  });
  const inStore = async (mode, work) => {
    const transaction = (await opened).transaction("kept", mode);
    const request = work(transaction.objectStore("kept"));
    transaction.commit?.(); // a page that is left before the answer loses nothing
    return new Promise((done, failed) => {
      transaction.oncomplete = () => done(request.result);
      transaction.onabort = () => failed(transaction.error);
    });
  };

  // What was kept under a key, or the fallback; where this browser keeps nothing, the page says so.
  const kept = async (mode, work) => {
    try {
      return await inStore(mode, work);
    } catch {
      lost.hidden = false;
      return undefined;
    }
  };
  const read = async (key, fallback) => (await kept("readonly", (store) => store.get(key))) ?? fallback;
  const write = (key, state) => kept("readwrite", (store) => store.put(state, key));
  const forget = (key) => kept("readwrite", (store) => store.delete(key));

  const element = (name, attributes, ...content) => {
    const out = document.createElement(name);
    for (const [key, value] of Object.entries(attributes)) {
      if (key === "click" || key === "change" || key === "input") {
        out.addEventListener(key, value);
      } else {
        out.setAttribute(key, value);
      }
    }
    out.append(...content);
    return out;
  };
  const button = (words, click, more = {}) => element("button", { type: "button", click, ...more }, words);

  // To the bench, as if the file had been dropped there.
  const send = (address, player, file) => {
    const body = new FormData();
    body.set("player", player);
    body.set("file", file);
    return fetch(address, { method: "POST", body, headers: { Accept: "text/plain" } });
  };

  // To whatever the phone shares with, else as a download.
  async function give(file) {
    if (navigator.canShare?.({ files: [file] })) {
      try {
        await navigator.share({ files: [file] });
        return;
      } catch (e) {
        if (e.name === "AbortError") {
          return;
        }
      }
    }
    const link = element("a", { href: URL.createObjectURL(file), download: file.name });
    document.body.append(link);
    link.click();
    link.remove();
  }

  return { drawn, today, read, write, forget, element, button, send, give };
})();
