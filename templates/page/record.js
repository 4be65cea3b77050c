// The reader's numbers: pairs of quantity keys in base units. They live in the
// address behind #, on the device only if the reader says so, and go nowhere.
const store = "plumbline", version = 1, pause = 500; // ms between addresses
const hearers = [], links = new Map();
let pairs = new Map(), unsaved = new Map(), anchor = "", keeping = false, timer, written = -pause;

// Pairs are merged by name. estimated=KEY and from=KEY.CALCULATOR have the key in it.
const named = (key, value) => (key === "estimated" || key === "from" ? `${key} ${value.split(".")[0]}` : key);
const read = (text) => new Map([...new URLSearchParams(text)].map((pair) => [named(...pair), pair]));
const write = (map) => new URLSearchParams([...map.values()]).toString();
const differ = (a, b) => String(a) !== String(b);

export const text = () => write(pairs);
export const at = (name) => pairs.get(name)?.[1];
export const units = () => ["mm", "cm", "in"].find((u) => u === pairs.get("u")?.[1]) ?? document.documentElement.dataset.units;
export const kept = () => keeping;
// What a client sent stays apart from the numbers of whoever opens it.
export const apart = () => pairs.has("ask.back");
// hear(keys, source, all) is called after changes.
export const listen = (hear) => hearers.push(hear);

// Changes pairs, [[key, value]]; "" takes one out. What is said of the old value goes.
export function put(changes, source, marks = []) {
  const next = new Map(pairs);
  for (const [key, value] of changes) {
    const gone = value === at(key) ? [] : [".unit", ".on", ".done"];
    if (!value || gone[0] && at(key + ".done")) gone.push(".was");
    for (const name of ["estimated " + key, "from " + key, ...gone.map((mark) => key + mark)]) next.delete(name);
    if (value) next.set(key, [key, value]);
    else next.delete(key);
  }
  for (const mark of marks) next.set(named(...mark), mark);
  become(next, source);
}

// Takes a computed value over and keeps what the bike has beside it.
export function use(key, value, marks) {
  const had = at(key + ".done") || !at(key + ".was") && !pairs.has("from " + key) ? at(key) : at(key + ".was");
  put([[key, value]], undefined, had && had !== value ? [[key + ".was", had], ...marks] : marks);
}

export function forget() {
  const own = !apart();
  become(new Map([...pairs].filter(([name]) => name === "u")), undefined, true);
  save();
  if (own) keep(false);
}

function become(next, source, all, others) {
  const keys = new Set();
  for (const name of new Set([...pairs.keys(), ...next.keys()])) {
    if (!differ(next.get(name), pairs.get(name))) continue;
    keys.add(name.split(" ").pop());
    if (!others) unsaved.set(name, next.get(name));
  }
  pairs = next;
  if (keys.size || all || others) for (const hear of hearers) hear(keys, source, all);
  if (keys.size) timer ??= setTimeout(save, written + pause - performance.now());
}

function save() {
  timer = clearTimeout(timer);
  written = performance.now();
  const now = text(), hash = now && anchor ? `${now}&at=${encodeURIComponent(anchor)}` : now || anchor;
  history.replaceState({ store }, "", hash ? "#" + hash : location.pathname + location.search);
  carry();
  if (keeping && unsaved.size) remember();
}

// Only what changed here is laid over what the device has: two tabs merge.
function remember() {
  const all = stored() ?? new Map();
  for (const [name, pair] of unsaved) {
    if (pair) all.set(name, pair);
    else all.delete(name);
  }
  unsaved.clear();
  try {
    localStorage.setItem(store, JSON.stringify({ version, record: write(all) }));
  } catch {
    keeping = false;
  }
}

function stored(json) {
  try {
    const it = JSON.parse(json === undefined ? localStorage.getItem(store) : json);
    return it.version === version ? read(it.record) : undefined;
  } catch {
    return undefined;
  }
}

export function keep(yes) {
  keeping = yes;
  unsaved = new Map(pairs);
  if (yes) remember();
  else try {
    localStorage.removeItem(store);
  } catch { /* then there is nothing */ }
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

// Without = the address is an anchor, which the browser has gone to by itself.
function address() {
  const hash = location.hash.slice(1), map = hash.includes("=") ? read(hash) : undefined;
  anchor = map ? map.get("at")?.[1] ?? "" : decodeURIComponent(hash);
  map?.delete("at");
  if (map) document.getElementById(anchor)?.scrollIntoView();
  return map;
}

export function open() {
  const given = address() ?? new Map();
  const here = given.has("ask.back") ? undefined : stored();
  keeping = !!here;
  pairs = new Map([...here ?? [], ...given]);
  for (const link of document.querySelectorAll("a[href]")) {
    const href = link.getAttribute("href");
    if (!/^([a-z][a-z+.-]*:|\/\/|#)/i.test(href)) links.set(link, href);
  }
  if (pairs.size) save();
  addEventListener("hashchange", () => {
    const map = address();
    // Going back to an address of ours moves the page, not the numbers.
    if (map && !history.state) become(map);
    else if (pairs.size) save();
  });
  addEventListener("storage", ({ key, oldValue, newValue }) => {
    if (key !== store || apart()) return;
    keeping = newValue !== null;
    const was = stored(oldValue) ?? new Map(), now = stored(newValue), next = new Map(pairs);
    for (const [name, pair] of now ?? []) if (differ(pair, was.get(name))) next.set(name, pair);
    for (const name of now ? was.keys() : []) if (!now.has(name)) next.delete(name);
    become(next, undefined, now && !now.size, true);
  });
  addEventListener("click", carry, true);
  addEventListener("pagehide", () => timer && save());
}
