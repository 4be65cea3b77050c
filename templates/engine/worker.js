// An engine in its own thread: its file with the texts of its language first, then questions in, replies out.
import "./wasm_exec.js";

const go = new globalThis.Go();

/** @param {{ engine: Blob, texts: string[] }} parts */
async function run({ engine: code, texts }) {
  const { instance } = await WebAssembly.instantiate(await code.arrayBuffer(), go.importObject);
  const end = go.run(instance);
  while (!globalThis.plumbline) {
    await new Promise((again) => {
      setTimeout(again);
    });
  }
  const engine = globalThis.plumbline;
  for (const file of texts) if (!engine.learn(file)) throw new Error("The texts of this language were cut off.");
  onmessage = ({ data }) => {
    postMessage({ id: data.id, begun: true });
    postMessage({ id: data.id, reply: engine.answer(data.question) });
  };
  postMessage({ ready: true });
  await end;
}

const dead = () => postMessage({ dead: true });
onmessage = ({ data }) => {
  run(data).then(dead, dead);
};
