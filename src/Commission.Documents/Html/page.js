(() => {
  "use strict";
  const all = (root, selector) => Array.from(root.querySelectorAll(selector));
  const make = (name, properties) => Object.assign(document.createElement(name), properties);
  const said = JSON.parse(document.getElementById("words").textContent);

  // Values at the pointer, under the finger, or by keyboard through the slider.
  for (const plot of all(document, ".plot")) {
    const store = plot.querySelector("script");
    if (!store) continue;
    const points = JSON.parse(store.textContent);
    const svg = plot.querySelector("svg");
    const ring = document.createElementNS("http://www.w3.org/2000/svg", "circle");
    ring.setAttribute("class", "ring");
    ring.setAttribute("r", "3.6");
    const row = make("div", { className: "read" });
    const slider = make("input", { type: "range", min: "0", max: String(points.length - 1), value: "0" });
    slider.setAttribute("aria-label", said.read);
    slider.setAttribute("aria-valuetext", said.idle);
    const words = make("output", { textContent: said.point });
    row.append(slider, words);
    plot.append(row);
    const show = index => {
      const [x, y, text] = points[index];
      ring.setAttribute("cx", x);
      ring.setAttribute("cy", y);
      if (!ring.parentNode) svg.append(ring);
      words.textContent = text;
      slider.value = String(index);
      slider.setAttribute("aria-valuetext", text);
    };
    slider.addEventListener("input", () => show(Number(slider.value)));
    svg.addEventListener("pointermove", event => {
      const box = svg.getBoundingClientRect();
      const scale = svg.viewBox.baseVal.width / box.width;
      const x = (event.clientX - box.left) * scale;
      const y = (event.clientY - box.top) * scale;
      let best = -1;
      let least = 40 * 40;
      points.forEach((point, index) => {
        // Along the axis counts double: people run along a curve, not at it.
        const distance = 4 * (point[0] - x) ** 2 + (point[1] - y) ** 2;
        if (distance < least) {
          least = distance;
          best = index;
        }
      });
      if (best >= 0) show(best);
    });
  }

  // Traces, all at once.
  const traces = all(document, "details.trace");
  if (traces.length > 1) {
    const tools = make("div", { className: "tools" });
    for (const [label, open] of [[said.unfold, true], [said.fold, false]]) {
      const button = make("button", { type: "button", textContent: label });
      button.addEventListener("click", () => traces.forEach(trace => { trace.open = open; }));
      tools.append(button);
    }
    document.querySelector(".trace").before(tools);
  }
  // On a telephone the parts behind page 1 are folded under their headings.
  if (matchMedia("(max-width: 40rem)").matches) all(document, "details.fold").forEach(part => { part.open = false; });
  const reveal = () => {
    const target = location.hash.length > 1 && document.getElementById(decodeURIComponent(location.hash.slice(1)));
    let folded = false;
    for (let part = target && target.closest("details"); part; part = part.parentElement.closest("details")) {
      folded ||= !part.open;
      part.open = true;
    }
    const inside = target && target.querySelector(":scope > details.fold");
    if (inside && !inside.open) {
      inside.open = true;
      folded = true;
    }
    if (folded) target.scrollIntoView();
  };
  addEventListener("hashchange", reveal);
  reveal();

  // Copying a value.
  const status = make("div", { className: "status" });
  status.setAttribute("role", "status");
  document.querySelector("main").append(status);
  let clearing = 0;
  const say = text => {
    status.textContent = text;
    clearTimeout(clearing);
    clearing = setTimeout(() => { status.textContent = ""; }, 2500);
  };
  const copy = async text => {
    try {
      await navigator.clipboard.writeText(text);
    } catch {
      const field = make("textarea", { value: text });
      document.body.append(field);
      field.select();
      document.execCommand("copy");
      field.remove();
    }
    say(said.copied + " " + text);
  };
  const offer = (element, keyboard) => {
    const text = all(element, ".pad").reduce((whole, pad) => whole.slice(pad.textContent.length), element.textContent).trim();
    if (!text) return;
    const button = make("button", { type: "button", className: "copy", textContent: said.copy });
    button.setAttribute("aria-label", said.copy + " " + (text.length > 40 ? text.slice(0, 12) + "…" : text));
    if (!keyboard) button.tabIndex = -1;
    button.addEventListener("click", event => {
      event.preventDefault();
      copy(text);
    });
    if (element.matches("td")) element.append(button);
    else element.after(button);
  };
  all(document, "code").forEach(element => offer(element, true));
  all(document, ".told p > strong:last-of-type").forEach(element => offer(element, true));
  all(document, "td.decimal").forEach(element => offer(element, false));

  // A frame that does not scroll is no stop for the keyboard.
  const frames = all(document, ".scroll");
  const measure = () => frames.forEach(frame => {
    if (frame.scrollWidth > frame.clientWidth + 1) frame.tabIndex = 0;
    else frame.removeAttribute("tabindex");
  });
  addEventListener("resize", measure);
  measure();
})();
