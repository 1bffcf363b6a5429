// Turns each saved picture of a figure into an interactive chart, once it is in the page and has a width.
(function () {
  "use strict";
  if (window.eightOhmFigures) return window.eightOhmFigures();
  const night = window.matchMedia("(prefers-color-scheme: dark)");
  const byNight = /*BY_NIGHT*/{};
  const charts = new Map();

  // Engineering notation, as everywhere; four digits where no more are asked.
  function reading(value, { unit, prefixed }, digits = 4) {
    const thirds = value && prefixed ? Math.floor(Math.log10(Math.abs(value)) / 3 + 1e-9) : 0;
    const third = Math.max(-5, Math.min(thirds, unit === "s" ? 0 : 4));
    const number = String(Number((value / 10 ** (3 * third)).toPrecision(digits))).replace("-", "\u2212");
    return (number + " " + (third ? "fpnµm kMGT"[third + 5] : "") + unit).trim();
  }

  const steps = (low, high, step) => {
    const found = [];
    for (let k = Math.ceil(low / step - 1e-9); k <= high / step + 1e-9; k++) found.push(k * step);
    return found;
  };

  // As a static picture has them: 1, 2 and 5 of each decade, decades alone where there are many.
  function ticks(range, isLog, axis) {
    let [low, high] = range, values = [];
    if (isLog) {
      const multiples = high - low <= 2.5 ? [1, 2, 5] : [1];
      for (let power = Math.floor(low); power <= high; power++)
        multiples.forEach(m => { const at = power + Math.log10(m); if (at >= low && at <= high) values.push(m * 10 ** power); });
      low = 10 ** low;
      high = 10 ** high;
    }
    const rough = (high - low) / 5, decade = 10 ** Math.floor(Math.log10(rough));
    const step = [1, 2, 5, 10].find(m => m * decade >= rough * (1 - 1e-9)) * decade;
    if (values.length < 3) values = steps(low, high, step);
    const largest = Math.max(Math.abs(low), Math.abs(high));
    const digits = isLog && high / low > 2 ? 6 : Math.min(12, Math.max(1, Math.ceil(Math.log10(largest / step) + 1)));
    return { tickvals: values, ticktext: values.map(v => reading(v, axis, digits)) };
  }

  // The ticks follow what is in sight.
  function retick(chart) {
    const change = {};
    ["xaxis", "yaxis"].forEach(name => {
      const now = chart.plot.layout[name], first = chart.first[name];
      if (!now || !first || !chart.axes[name[0]] || (name === "xaxis" && chart.isBars)) return;
      const same = now.range.every((end, i) => Math.abs(end - first.range[i]) < 1e-9 * Math.abs(first.range[1] - first.range[0]));
      const wanted = same ? first : ticks(now.range, now.type === "log", chart.axes[name[0]]);
      if (String(now.tickvals) === String(wanted.tickvals)) return;
      change[name + ".tickvals"] = wanted.tickvals;
      change[name + ".ticktext"] = wanted.ticktext;
      change[name + ".minor.tickvals"] = same ? first.minor : [];
    });
    if (Object.keys(change).length) window.Plotly.relayout(chart.plot, change);
  }

  function draw(figure) {
    const width = figure.clientWidth, chart = charts.get(figure);
    if (!chart || !width || !window.Plotly) return;
    const state = width + "/" + night.matches;
    if (chart.state === state) return;
    chart.state = state;
    const spec = JSON.parse(chart.spec, (key, value) => (night.matches && typeof value === "string" && byNight[value]) || value);
    const layout = Object.assign(spec.layout, width <= /*BREAKPOINT*/0 ? spec.layout.meta : {}, { width, meta: null });
    const named = spec.data.filter(trace => trace.meta);
    named.filter(trace => trace.type === "scatter").forEach(trace => {
      trace.text = trace.x.map((x, i) => reading(x, trace.meta.x) + ", " + reading(trace.y[i], trace.meta.y));
    });
    chart.values = named;
    chart.isBars = named.some(trace => trace.type === "bar");
    chart.axes = (named[0] && named[0].meta) || {};
    chart.first = {};
    ["xaxis", "yaxis"].forEach(name => {
      const { range, tickvals, ticktext, minor } = layout[name];
      chart.first[name] = { range: [...range], tickvals, ticktext, minor: minor.tickvals };
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
      () => {
        chart.image.hidden = true;
        chart.tools.hidden = false;
        if (!chart.heard) {
          chart.heard = true;
          chart.plot.on("plotly_relayout", () => retick(chart));
        }
      },
      error => { chart.plot.hidden = chart.tools.hidden = true; console.warn("EightOhm: the picture stays static.", error); });
  }

  // A part of what is in sight: moved by so much of it, and so much of it wide.
  function view(chart, dx, dy, zoom) {
    const change = {};
    [["xaxis", dx], ["yaxis", dy]].forEach(([name, move]) => {
      const axis = chart.plot.layout[name];
      if (axis.fixedrange || !chart.axes[name[0]]) return;
      const [low, high] = axis.range, middle = (low + high) / 2 + move * (high - low), half = (high - low) / 2 * zoom;
      change[name + ".range"] = [middle - half, middle + half];
    });
    window.Plotly.relayout(chart.plot, change);
  }

  function whole(chart) {
    const { xaxis, yaxis } = chart.first;
    window.Plotly.relayout(chart.plot, { "xaxis.range": [...xaxis.range], "yaxis.range": [...yaxis.range] });
  }

  function keep(name, href) {
    const link = document.createElement("a");
    link.href = href;
    link.download = name;
    link.click();
  }

  // Long rows, so that lines of other places fit one file: which line, x, y.
  function values(chart) {
    const quoted = text => /[",\n]/.test(text) ? '"' + text.replace(/"/g, '""') + '"' : String(text);
    const head = axis => axis.label + (axis.unit ? " (" + axis.unit + ")" : "");
    const rows = [["series", head(chart.axes.x), head(chart.axes.y)]];
    chart.values.forEach(trace => trace.x.forEach((x, i) =>
      rows.push([trace.name || "", chart.isBars ? chart.first.xaxis.ticktext[i].replace(/<br>/g, " ") : x, trace.y[i]])));
    return rows.map(row => row.map(quoted).join(",")).join("\r\n") + "\r\n";
  }

  function fileName(chart) {
    return (chart.image.alt.split(". ")[0].replace(/[^\p{L}\p{N}]+/gu, "-").replace(/^-|-$/g, "").slice(0, 60) || "figure").toLowerCase();
  }

  function toolsOf(chart) {
    const bar = document.createElement("div");
    bar.className = "eo-tools";
    bar.hidden = true;
    [["Whole figure", () => whole(chart)],
     ["Keep picture", () => window.Plotly.toImage(chart.plot, { format: "svg" }).then(url => keep(fileName(chart) + ".svg", url))],
     ["Keep values", () => keep(fileName(chart) + ".csv", "data:text/csv;charset=utf-8," + encodeURIComponent("\uFEFF" + values(chart)))],
    ].forEach(([label, act]) => {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = label;
      button.addEventListener("click", act);
      bar.appendChild(button);
    });
    return bar;
  }

  const keys = {
    ArrowLeft: [-0.2, 0, 1], ArrowRight: [0.2, 0, 1], ArrowUp: [0, 0.2, 1], ArrowDown: [0, -0.2, 1],
    "+": [0, 0, 0.7], "=": [0, 0, 0.7], "-": [0, 0, 1 / 0.7],
  };

  function onKey(chart, event) {
    if (event.ctrlKey || event.metaKey || event.altKey || event.target !== chart.plot) return;
    if (event.key === "0") whole(chart);
    else if (keys[event.key]) view(chart, ...keys[event.key]);
    else return;
    event.preventDefault();
    event.stopPropagation();
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
      plot.setAttribute("role", "application");
      plot.setAttribute("aria-roledescription", "figure");
      plot.setAttribute("aria-label", image.alt + " Arrow keys move, plus and minus zoom, 0 shows the whole.");
      plot.tabIndex = 0;
      plot.hidden = true;
      const chart = { image, plot, spec: spec.textContent };
      chart.tools = toolsOf(chart);
      plot.addEventListener("keydown", event => onKey(chart, event));
      figure.insertBefore(plot, image);
      figure.insertBefore(chart.tools, image);
      charts.set(figure, chart);
      sizes.observe(figure);
    });
    charts.forEach((chart, figure) => {
      if (figure.isConnected) return;
      sizes.unobserve(figure);
      window.Plotly.purge(chart.plot);
      charts.delete(figure);
      delete figure.dataset.live;
      chart.plot.remove();
      chart.tools.remove();
      chart.image.hidden = false;
    });
  }

  // Paper wants the static picture.
  const style = document.createElement("style");
  style.textContent = ".eo-figure [hidden]{display:none!important}"
    + ".eo-plot:focus-visible{outline:2px solid #17557e;outline-offset:2px}"
    + ".eo-tools{display:flex;flex-wrap:wrap;gap:.5em;margin:.2em 0 0}"
    + ".eo-tools button{font:inherit;font-size:.8em;color:inherit;background:none;border:1px solid currentColor;border-radius:3px;padding:.1em .6em;opacity:.75;cursor:pointer}"
    + ".eo-tools button:hover,.eo-tools button:focus-visible{opacity:1}"
    + "@media print{.eo-figure img[hidden]{display:block!important}.eo-figure .eo-plot,.eo-figure .eo-tools{display:none!important}}";
  document.head.appendChild(style);

  night.addEventListener("change", () => charts.forEach((chart, figure) => draw(figure)));
  new MutationObserver(scan).observe(document.documentElement, { childList: true, subtree: true });
  window.eightOhmFigures = scan;
  scan();
})();
