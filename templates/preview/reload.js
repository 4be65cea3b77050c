// Part of the preview alone: loads the page anew when its guide has changed.
const started = document.documentElement.dataset.version;
const events = new EventSource(new URL("events", import.meta.url));

events.addEventListener("message", (event) => {
  if (event.data !== started) {
    events.close();
    location.reload();
  }
});
