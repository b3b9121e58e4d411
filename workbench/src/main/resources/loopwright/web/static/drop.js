// A form that takes a file also takes it by dropping it anywhere on the form.
document.querySelectorAll("form.drop").forEach((form) => {
  const input = form.querySelector("input[type=file]");
  form.addEventListener("dragover", (event) => {
    event.preventDefault();
    form.classList.add("over");
  });
  form.addEventListener("dragleave", () => form.classList.remove("over"));
  form.addEventListener("drop", (event) => {
    event.preventDefault();
    form.classList.remove("over");
    if (event.dataTransfer.files.length > 0) {
      input.files = event.dataTransfer.files;
      form.requestSubmit();
    }
  });
});
