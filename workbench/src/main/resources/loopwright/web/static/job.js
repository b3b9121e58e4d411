// Follows work under way: shows how far it is, offers to stop it, and loads the page again when it is over.
export function follow(box) {
  const bar = box.querySelector("progress");
  const status = box.querySelector("[role=status]");
  const source = new EventSource(box.dataset.events);
  source.addEventListener("state", (event) => {
    const [state, done, total] = event.data.split(" ");
    if (Number(total) > 0) {
      bar.value = (100 * Number(done)) / Number(total);
    }
    if (state === "DONE" || state === "FAILED") {
      source.close();
      location.reload();
    } else if (state === "CANCELLED") {
      source.close();
      bar.remove();
      box.querySelector("button").remove();
      status.textContent = box.dataset.stopped;
      box.classList.add("stopped");
    }
  });
  box.querySelector("button").addEventListener("click", () => {
    fetch("/jobs/cancel", { method: "POST", body: new URLSearchParams({ key: box.dataset.key }) });
  });
}

document.querySelectorAll(".job").forEach(follow);
