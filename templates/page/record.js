// The reader's numbers: pairs of quantity keys in base units. They live in the
// address behind #, on the device only if the reader says so, and go nowhere.
const store = "plumbline", version = 1, pause = 500; // ms between addresses
let pairs = new Map(), unsaved = new Map(), anchor = "", keeping = false, timer, written = -pause;
const hearers = [];
const links = new Map();

// estimated=KEY and from=KEY.CALCULATOR are told apart by the key they speak of.
const slot = (key, value) => key === "estimated" || key === "from" ? key + " " + value.split(".")[0] : key;

function parse(text) {
  const map = new Map();
  for (const [key, value] of new URLSearchParams(text)) map.set(slot(key, value), [key, value]);
  return map;
}

export const text = () => new URLSearchParams([...pairs.values()]).toString();
export const units = () => ["mm", "cm", "in"].find(u => u === pairs.get("u")?.[1]) ?? (document.documentElement.dataset.units || "mm");
export const kept = () => keeping;
/** hear(keys, source) is called after changes; source is who made them. */
export const listen = hear => hearers.push(hear);

/** Changes pairs, [[key, value]]; an empty value takes the pair out. */
export function put(changes, source, marks = []) {
  const next = new Map(pairs);
  for (const [key, value] of changes) {
    for (const old of [key, "estimated " + key, "from " + key]) if (old !== key || !value) next.delete(old);
    if (value) next.set(key, [key, value]);
  }
  for (const [key, value] of marks) next.set(slot(key, value), [key, value]);
  become(next, source, unsaved);
}

export function forget() {
  become(new Map([...pairs].filter(([name]) => name === "u")), undefined, unsaved, true);
  save();
  keep(false);
}

// Takes over another state; log gathers what changed, for the device.
function become(next, source, log, all) {
  const keys = new Set();
  for (const name of new Set([...pairs.keys(), ...next.keys()])) {
    const value = next.get(name);
    if (String(value) === String(pairs.get(name))) continue;
    keys.add(name.split(" ").pop());
    log?.set(name, value);
  }
  pairs = next;
  if (keys.size || all) for (const hear of hearers) hear(keys, source, all);
  if (keys.size) timer ??= setTimeout(save, Math.max(0, written + pause - performance.now()));
}

function save() {
  timer = clearTimeout(timer);
  written = performance.now();
  const now = text(), hash = now && anchor ? `${now}&at=${encodeURIComponent(anchor)}` : now || anchor;
  history.replaceState({ store }, "", hash ? "#" + hash : location.pathname + location.search);
  carry();
  if (keeping) remember();
}

// Only what changed here is laid over what the device has: two tabs merge.
function remember() {
  const all = load() ?? new Map();
  for (const [name, value] of unsaved) value ? all.set(name, value) : all.delete(name);
  unsaved.clear();
  try {
    localStorage.setItem(store, JSON.stringify({ version, record: new URLSearchParams([...all.values()]).toString() }));
  } catch {
    keeping = false;
  }
}

function load(json) {
  try {
    const kept = JSON.parse(json === undefined ? localStorage.getItem(store) : json);
    return kept.version === version ? parse(kept.record) : undefined;
  } catch {
    return undefined;
  }
}

/** Keeps the record on this device from now on, or takes it off; tells whether it is kept. */
export function keep(yes) {
  keeping = yes;
  if (yes) {
    unsaved = new Map(pairs);
    remember();
  } else {
    try {
      localStorage.removeItem(store);
    } catch { /* then nothing is there */ }
  }
  return keeping;
}

// In-guide links carry the record along.
function carry() {
  const now = text();
  for (const [link, href] of links) {
    const [path, at] = href.split("#");
    link.setAttribute("href", now ? `${path}#${now}${at ? "&at=" + at : ""}` : href);
  }
}

// Reads the address. Without = it is an anchor, which the browser has gone to.
function readAddress() {
  const hash = location.hash.slice(1);
  if (!hash.includes("=")) {
    anchor = hash && decodeURIComponent(hash);
    return false;
  }
  const map = parse(hash);
  anchor = map.get("at")?.[1] ?? "";
  map.delete("at");
  document.getElementById(anchor)?.scrollIntoView();
  return map;
}

export function open() {
  const here = load();
  keeping = !!here;
  pairs = new Map([...here ?? [], ...readAddress() || []]);
  for (const link of document.querySelectorAll("a[href]")) {
    const href = link.getAttribute("href");
    if (!/^([a-z][a-z+.-]*:|\/\/|#)/i.test(href)) links.set(link, href);
  }
  if (pairs.size) save();
  addEventListener("hashchange", () => {
    const map = readAddress();
    // Going back to an address of ours moves the page, not the numbers.
    if (map && !history.state) become(map);
    else if (pairs.size) save();
  });
  addEventListener("storage", event => {
    if (event.key !== store) return;
    keeping = event.newValue !== null;
    if (keeping) {
      const was = load(event.oldValue) ?? new Map(), now = load(event.newValue) ?? new Map(), next = new Map(pairs);
      for (const [name, value] of now) if (String(value) !== String(was.get(name))) next.set(name, value);
      for (const name of was.keys()) if (!now.has(name)) next.delete(name);
      become(next);
    }
    for (const hear of hearers) hear(new Set());
  });
  addEventListener("click", carry, true);
  addEventListener("pagehide", () => timer && save());
}
