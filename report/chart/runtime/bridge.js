// Runs after the bundle: draw(optionJSON, width, height) -> SVG text, and the
// one table of functions that an option can name ("@band"). A name counts
// only where ECharts expects a function, so a variety called "@band" stays
// text. measureWidth(text, font) comes from the host.
var draw = (function (echarts, measureWidth) {
  "use strict";

  echarts.setPlatformAPI({
    measureText: function (text, font) { return { width: measureWidth(String(text), String(font)) }; },
  });

  function line(x1, y1, x2, y2, style) {
    style.fill = "none";
    return { type: "line", z2: 10, shape: { x1: x1, y1: y1, x2: x2, y2: y2 }, style: style };
  }

  function known(v) { return typeof v === "number" && isFinite(v); }

  // ---- renderItem functions. Values of an item are named in each comment.

  // [0, row]: a line across the plot in place of a bar, its words above it
  function divider(params, api) {
    var c = params.coordSys, y = Math.round(api.coord([api.value(0), api.value(1)])[1]) + 9;
    return {
      type: "group",
      children: [line(c.x, y, c.x + c.width, y, { stroke: "var(--ink)", lineWidth: 1.5, lineDash: [6, 4] }), label(params, c.x + 6, y - 3, "left")],
    };
  }

  // [x, low, high]: the area between two lines, broken where either is missing
  function band(params, api) {
    if (params.dataIndex !== 0) { return null; }
    var areas = [], upper = [], lower = [];
    function close() {
      if (upper.length > 1) { areas.push(upper.concat(lower.reverse())); }
      upper = []; lower = [];
    }
    for (var i = 0; i < params.dataInsideLength; i++) {
      var x = api.value(0, i), low = api.value(1, i), high = api.value(2, i);
      if (!known(low) || !known(high)) { close(); continue; }
      upper.push(api.coord([x, high]));
      lower.push(api.coord([x, low]));
    }
    close();
    return {
      type: "group",
      children: areas.map(function (points) {
        return { type: "polygon", z2: -1, shape: { points: points }, style: { fill: api.visual("color"), opacity: 0.2 } };
      }),
    };
  }

  // label writes the series' name, with a rim of paper against what lies under.
  function label(params, x, y, align) {
    return {
      type: "text", z2: 20,
      style: {
        text: params.seriesName, x: x, y: y, align: align, verticalAlign: "bottom",
        fill: "var(--ink)", stroke: "var(--paper)", lineWidth: 3, fontSize: 14,
      },
    };
  }

  // [x, level, edge, side]: a reference line from top to bottom, named above the
  // plot; edge is where its label ends, side which end that is (0 left, 1 right)
  function upright(params, api) {
    var c = params.coordSys, x = api.coord([api.value(0), 0])[0], top = c.y - 4 - api.value(1) * 18;
    return {
      type: "group",
      children: [
        line(x, api.value(1) > 0 ? top : top + 2, x, c.y + c.height, { stroke: "var(--ink)", lineWidth: 1.5, lineDash: [6, 4] }),
        label(params, api.value(2), top, api.value(3) === 1 ? "right" : "left"),
      ],
    };
  }

  // [y, left, line]: a reference line from left to right, named above the plot,
  // where no number can lie under the name; left is where its name begins, after
  // a piece of the line, line how many lines of text stand between it and the plot
  function level(params, api) {
    var c = params.coordSys, y = api.coord([0, api.value(0)])[1], left = api.value(1), base = c.y - 10 - api.value(2) * 18;
    function dashes(x1, x2, y) { return line(x1, y, x2, y, { stroke: "var(--ink)", lineWidth: 1.5, lineDash: [6, 4] }); }
    return { type: "group", children: [dashes(c.x, c.x + c.width, y), dashes(left - 32, left - 6, base - 7), label(params, left, base, "left")] };
  }

  // [x, y, line]: the words of a vertical axis, above it from the left edge
  function heading(params, api) {
    return { type: "group", children: [label(params, 4, params.coordSys.y - 10 - api.value(2) * 18, "left")] };
  }

  // ---- formatter functions

  var months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

  // days since 1970-01-01 -> "3 Mar"
  function day(value) {
    var d = new Date(value * 86400000);
    return d.getUTCDate() + " " + months[d.getUTCMonth()];
  }

  // days since 1970-01-01 -> "Mar"; January brings its year
  function month(value) {
    var d = new Date(value * 86400000), m = d.getUTCMonth();
    return m === 0 ? months[m] + "\n" + d.getUTCFullYear() : months[m];
  }

  // numbers: no more digits than the axis' steps need, thousands set apart
  function plain(value) {
    var text = String(Math.round(Math.abs(value) * 1e6) / 1e6).split(".");
    text[0] = text[0].replace(/\B(?=(\d{3})+$)/g, ",");
    return (value < 0 ? "\u2212" : "") + text.join(".");
  }

  function signed(value) { return (value > 0 ? "+" : "") + plain(value); }

  function percent(value) { return plain(value) + " %"; }

  function signedPercent(value) { return signed(value) + " %"; }

  var named = {
    renderItem: { "@band": band, "@upright": upright, "@level": level, "@heading": heading, "@divider": divider },
    formatter: { "@day": day, "@month": month, "@plain": plain, "@signed": signed, "@percent": percent, "@signedPercent": signedPercent },
  };

  // bind puts functions in place of their names, in place.
  function bind(node) {
    if (node === null || typeof node !== "object") { return; }
    Object.keys(node).forEach(function (key) {
      var table = Object.prototype.hasOwnProperty.call(named, key) ? named[key] : null;
      if (table && typeof node[key] === "string" && node[key][0] === "@") {
        if (!Object.prototype.hasOwnProperty.call(table, node[key])) { throw new Error("no function " + node[key]); }
        node[key] = table[node[key]];
      } else {
        bind(node[key]);
      }
    });
  }

  return function (optionJSON, width, height) {
    var option = JSON.parse(optionJSON);
    bind(option);
    var chart = echarts.init(null, null, { renderer: "svg", ssr: true, width: width, height: height });
    try {
      chart.setOption(option);
      return chart.renderToSVGString();
    } finally {
      chart.dispose();
    }
  };
})(this.echarts, this.measureWidth);
