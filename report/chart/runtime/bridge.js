// Runs after the bundle: draw(optionJSON, width, height) -> SVG text, and the
// one table of functions that an option can name ("@whisker"). A name counts
// only where ECharts expects a function, so a variety called "@whisker" stays
// text. measureWidth(text, font) comes from the host.
var draw = (function (echarts, measureWidth) {
  "use strict";

  echarts.setPlatformAPI({
    measureText: function (text, font) { return { width: measureWidth(String(text), String(font)) }; },
  });

  // ---- shapes: [path builder] around a centre, r about the radius
  var shapes = [
    function (x, y, r) { return { type: "circle", shape: { cx: x, cy: y, r: r } }; },
    function (x, y, r) { return { type: "rect", shape: { x: x - r * 0.9, y: y - r * 0.9, width: r * 1.8, height: r * 1.8 } }; },
    function (x, y, r) { return polygon([[x, y - r * 1.2], [x + r * 1.15, y + r * 0.9], [x - r * 1.15, y + r * 0.9]]); },
    function (x, y, r) { return polygon([[x, y - r * 1.3], [x + r * 1.3, y], [x, y + r * 1.3], [x - r * 1.3, y]]); },
  ];

  function polygon(points) { return { type: "polygon", shape: { points: points } }; }

  function line(x1, y1, x2, y2, style) {
    style.fill = "none";
    return { type: "line", z2: 10, shape: { x1: x1, y1: y1, x2: x2, y2: y2 }, style: style };
  }

  function known(v) { return typeof v === "number" && isFinite(v); }

  // mark draws one dot, filled, or hollow in the paper's colour.
  function mark(x, y, r, shape, colour, hollow) {
    var m = shapes[shape % shapes.length](x, y, r);
    m.z2 = 12;
    m.style = { fill: hollow ? "var(--paper)" : colour, stroke: colour, lineWidth: 2 };
    return m;
  }

  // interval draws a line with end caps; across tells which way it lies, rim
  // whether it is set off by paper against a bar that it lies on.
  function interval(a, b, at, across, colour, rim) {
    var cap = 7; // longer than a dot's radius, so that a short interval shows
    var parts = across
      ? [[a, at, b, at], [a, at - cap, a, at + cap], [b, at - cap, b, at + cap]]
      : [[at, a, at, b], [at - cap, a, at + cap, a], [at - cap, b, at + cap, b]];
    function strokes(colour, width) {
      return parts.map(function (p) { return line(p[0], p[1], p[2], p[3], { stroke: colour, lineWidth: width }); });
    }
    return (rim ? strokes("var(--paper)", 5) : []).concat(strokes(colour, 2));
  }

  // ---- renderItem functions. Values of an item are named in each comment.

  // [x, row, low, high, hollow, shape, shift in pixels, radius]
  function dot(params, api) {
    var row = api.value(1), colour = api.visual("color"), children = [];
    var y = api.coord([0, row])[1] + api.value(6);
    if (known(api.value(2)) && known(api.value(3))) {
      children = interval(api.coord([api.value(2), row])[0], api.coord([api.value(3), row])[0], y, true, colour);
    }
    if (known(api.value(0))) {
      children.push(mark(api.coord([api.value(0), row])[0], y, api.value(7), api.value(5), colour, api.value(4) === 1));
    }
    return { type: "group", children: children };
  }

  // [category, low, high, bar, bars]: the interval of a column of a group
  function whisker(params, api) {
    if (!known(api.value(1)) || !known(api.value(2))) { return null; }
    var places = api.barLayout({ count: api.value(4), barGap: "10%", barCategoryGap: "25%" });
    var x = api.coord([api.value(0), 0])[0] + places[api.value(3)].offsetCenter;
    return {
      type: "group",
      children: interval(api.coord([0, api.value(1)])[1], api.coord([0, api.value(2)])[1], x, false, "var(--ink)", true),
    };
  }

  // [x, row]: what the dot of a row is compared with
  function stroke(params, api) {
    var at = api.coord([api.value(0), api.value(1)]);
    return { type: "group", children: [line(at[0], at[1] - 10, at[0], at[1] + 10, { stroke: "var(--ink)", lineWidth: 3 })] };
  }

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
    renderItem: { "@dot": dot, "@whisker": whisker, "@band": band, "@upright": upright, "@level": level, "@heading": heading, "@stroke": stroke, "@divider": divider },
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
