// The engine in its own thread: questions in, replies out, nothing else.
import "./wasm_exec.js";

const go = new globalThis.Go();

async function load() {
  const url = new URL("engine.wasm", import.meta.url);
  try {
    return await WebAssembly.instantiateStreaming(fetch(url), go.importObject);
  } catch { // a host that sends another type than application/wasm
    const file = await fetch(url);
    return WebAssembly.instantiate(await file.arrayBuffer(), go.importObject);
  }
}

async function run() {
  const { instance } = await load();
  const end = go.run(instance);
  while (!globalThis.plumbline) {
    await new Promise((again) => {
      setTimeout(again);
    });
  }
  const engine = globalThis.plumbline;
  onmessage = ({ data }) => {
    postMessage({ id: data.id, begun: true });
    postMessage({ id: data.id, reply: engine.answer(data.question) });
  };
  postMessage({ ready: true });
  await end;
}

const dead = () => postMessage({ dead: true });
run().then(dead, dead);
