// Starts the page: fetches the program that index.html names and runs it, or says plainly why not.
// Then sees to it that the page opens without a network next time, and tells the program when a
// newer release is ready. A file of its own because the page's content security policy forbids
// inline scripts. Its few words stand here because the program that holds all others is not there.

const { js, wasm, wasmIntegrity } = document.querySelector("script[data-wasm]").dataset;
const boot = document.getElementById("boot");
const nearby = (name) => new URL(name, import.meta.url);
const workers = navigator.serviceWorker;
let registration;

try {
  // Both at once; the hash holds the program to the release that index.html is of.
  const program = fetch(nearby(wasm), { integrity: wasmIntegrity });
  program.catch(() => {});
  const { default: start } = await import(nearby(js));
  // The program itself takes the first words away, once the page stands.
  await start({ module_or_path: program });
  // Only then does anything listen to what is said below.
  if (boot.isConnected) {
    await new Promise((stands) => {
      new MutationObserver(() => boot.isConnected || stands()).observe(boot.parentNode, { childList: true });
    });
  }
} catch (error) {
  const reason = document.createElement("p");
  reason.setAttribute("role", "alert");
  reason.textContent =
    typeof WebAssembly === "object"
      ? "Slackwater could not be loaded. Check the connection, then try again. What this browser keeps of yours is untouched."
      : "Slackwater cannot run in this browser: WebAssembly is missing or switched off. Try a newer browser.";
  const again = document.createElement("button");
  again.type = "button";
  again.textContent = "Try again";
  // A newer release may have mended it.
  again.onclick = takeUpdate;
  boot.replaceChildren(reason, again);
  // For whoever looks into the cause; nothing is sent anywhere.
  console.error(error);
}

addEventListener("slackwater-take-update", takeUpdate);
// After the start, which needs the connection for itself. A browser that keeps no worker (private
// windows, blocked storage, no secure host) runs the page all the same, with a network.
workers
  ?.register(nearby("worker.js"), { updateViaCache: "none" })
  .then(watch)
  .catch(() => {});

function watch(found) {
  registration = found;
  const whenReady = (worker) => {
    // Without a controller this is the first release on the device, and nothing to offer.
    if (worker?.state === "installed" && workers.controller) dispatchEvent(new Event("slackwater-update-ready"));
  };
  whenReady(registration.waiting);
  registration.addEventListener("updatefound", () => {
    const worker = registration.installing;
    worker.addEventListener("statechange", () => whenReady(worker));
  });
  // A page that stays open for weeks asks when it is looked at again.
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible" && navigator.onLine) registration.update().catch(() => {});
  });
}

/** Changes to the waiting release, if there is one, and loads the page anew: this tab only. */
function takeUpdate() {
  const waiting = registration?.waiting;
  if (!waiting) return location.reload();
  waiting.addEventListener("statechange", () => {
    if (waiting.state === "activated") location.reload();
  });
  waiting.postMessage("take over");
}
