// An engine in its own thread: the compiled module first, then questions in, replies out.
import "./wasm_exec.js";

const go = new globalThis.Go();

/** @param {WebAssembly.Module} module */
async function run(module) {
  const end = go.run(await WebAssembly.instantiate(module, go.importObject));
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
onmessage = ({ data }) => {
  run(data.module).then(dead, dead);
};
