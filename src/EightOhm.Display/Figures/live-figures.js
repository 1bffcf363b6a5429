// Turns each saved picture of a figure into an interactive chart, once it is in the page and has a width.
(function () {
  "use strict";
  if (window.eightOhmFigures) return window.eightOhmFigures();
  const night = window.matchMedia("(prefers-color-scheme: dark)");
  const byNight = /*BY_NIGHT*/{};
  const charts = new Map();

  // Four digits in engineering notation, as everywhere.
  function reading(value, { unit, prefixed }) {
    const thirds = value && prefixed ? Math.floor(Math.log10(Math.abs(value)) / 3 + 1e-9) : 0;
    const third = Math.max(-5, Math.min(thirds, unit === "s" ? 0 : 4));
    const number = String(Number((value / 10 ** (3 * third)).toPrecision(4))).replace("-", "\u2212");
    return (number + " " + (third ? "fpnµm kMGT"[third + 5] : "") + unit).trim();
  }

  function draw(figure) {
    const width = figure.clientWidth, chart = charts.get(figure);
    if (!chart || !width || !window.Plotly) return;
    const state = width + "/" + night.matches;
    if (chart.state === state) return;
    chart.state = state;
    const spec = JSON.parse(chart.spec, (key, value) => (night.matches && typeof value === "string" && byNight[value]) || value);
    const layout = Object.assign(spec.layout, width <= /*BREAKPOINT*/0 ? spec.layout.meta : {}, { width, meta: null });
    spec.data.filter(trace => trace.meta).forEach(trace => {
      trace.text = trace.x.map((x, i) => reading(x, trace.meta.x) + ", " + reading(trace.y[i], trace.meta.y));
    });
    // A new size or new colours leave the slider where the reader put it.
    const [slider] = layout.sliders || [], [before] = (chart.plot.layout || {}).sliders || [];
    if (slider && before && slider.steps[before.active]) {
      slider.active = before.active;
      const [change, traces] = slider.steps[slider.active].args;
      traces.forEach((trace, i) => { spec.data[trace].opacity = change.opacity[i]; });
    }
    chart.plot.hidden = false;
    window.Plotly.react(chart.plot, spec.data, layout, spec.config).then(
      () => { chart.image.hidden = true; },
      error => { chart.plot.hidden = true; console.warn("EightOhm: the picture stays static.", error); });
  }

  // Later, because drawing inside the observer changes sizes that it is just reporting.
  const sizes = new ResizeObserver(entries => setTimeout(() => entries.forEach(entry => draw(entry.target))));

  function scan() {
    document.querySelectorAll("figure.eo-figure:not([data-live])").forEach(figure => {
      const image = figure.querySelector("img"), spec = figure.querySelector("script[type='application/json']");
      if (!image || !spec) return;
      figure.dataset.live = "";
      const plot = document.createElement("div");
      plot.className = "eo-plot";
      plot.setAttribute("role", "img");
      plot.setAttribute("aria-label", image.alt);
      plot.hidden = true;
      figure.insertBefore(plot, image);
      charts.set(figure, { image, plot, spec: spec.textContent });
      sizes.observe(figure);
    });
    charts.forEach((chart, figure) => {
      if (figure.isConnected) return;
      sizes.unobserve(figure);
      window.Plotly.purge(chart.plot);
      charts.delete(figure);
      delete figure.dataset.live;
      chart.plot.remove();
      chart.image.hidden = false;
    });
  }

  // Paper wants the static picture.
  const style = document.createElement("style");
  style.textContent = ".eo-figure [hidden]{display:none!important}"
    + "@media print{.eo-figure img[hidden]{display:block!important}.eo-figure .eo-plot{display:none!important}}";
  document.head.appendChild(style);

  night.addEventListener("change", () => charts.forEach((chart, figure) => draw(figure)));
  new MutationObserver(scan).observe(document.documentElement, { childList: true, subtree: true });
  window.eightOhmFigures = scan;
  scan();
})();
