// A calculator of the guide on any other page:
//
//   <script src="https://…/fit-calculator.js" defer></script>
//   <fit-calculator name="saddle-height"></fit-calculator>
//
// The page may give it two colours: --fit-first for what the reader sets and the main
// answer, --fit-second for the rider in the drawings. The calculator takes those that can
// be read on its ground.
//
// It stands in a frame inside the element's shadow root. No other way computes there:
// a page may start a worker of its own origin alone, and the engine is one. The frame
// also keeps apart what must be: the page sees no number that its reader types, and its
// style sheet and the guide's never meet.
{
  const script = /** @type {HTMLScriptElement} */ (document.currentScript), guide = new URL("./", script.src);
  const scheme = matchMedia("(prefers-color-scheme: dark)");
  const least = 80, most = 20000; // pixels; a frame that says anything else is not believed

  class FitCalculator extends HTMLElement {
    static observedAttributes = ["name"];

    frame = document.createElement("iframe");

    constructor() {
      super();
      const { frame } = this;
      Object.assign(frame.style, { display: "block", inlineSize: "100%", blockSize: "640px", border: "0", colorScheme: "light dark" });
      frame.loading = "lazy";
      frame.referrerPolicy = "no-referrer";
      frame.allow = "clipboard-write; fullscreen";
      this.attachShadow({ mode: "open" }).append(frame);
      this.hear = this.hear.bind(this);
      this.paint = this.paint.bind(this);
    }

    /** Tells the frame the colours that the page gives. */
    paint() {
      const style = getComputedStyle(this), [first, second] = ["--fit-first", "--fit-second"].map((name) => style.getPropertyValue(name).trim());
      if (first || second) this.frame.contentWindow?.postMessage({ first, second }, guide.origin);
    }

    connectedCallback() {
      this.style.display ||= "block";
      scheme.addEventListener("change", this.paint);
      addEventListener("message", this.hear);
    }

    disconnectedCallback() {
      removeEventListener("message", this.hear);
      scheme.removeEventListener("change", this.paint);
    }

    /**
     * @param {string} _name
     * @param {string | null} before
     * @param {string | null} now
     */
    attributeChangedCallback(_name, before, now) {
      if (now === before || !now) return;
      this.frame.title = this.getAttribute("title") ?? `Calculator: ${now.replaceAll("-", " ")}`;
      this.frame.src = new URL(`embed/${encodeURIComponent(now)}.html`, guide).href;
    }

    /** @param {MessageEvent} event */
    hear({ source, origin, data }) {
      if (source !== this.frame.contentWindow || origin !== guide.origin) return;
      const height = Number(data?.height);
      if (height >= least && height <= most) this.frame.style.blockSize = `${Math.ceil(height)}px`;
      this.paint(); // the frame is there and listens
    }
  }

  if (!customElements.get("fit-calculator")) customElements.define("fit-calculator", FitCalculator);
}
