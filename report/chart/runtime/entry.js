// The parts of ECharts that traybook's charts use, and no others: bars, lines
// and own shapes on straight axes, with legends and grey-print patterns,
// written as SVG text. `go generate ./...` bundles this file and what it
// imports into echarts.js.
import { init, use, setPlatformAPI, version } from "echarts/core";
import { BarChart, CustomChart, LineChart } from "echarts/charts";
import { AriaComponent, GridComponent, LegendComponent } from "echarts/components";
import { SVGRenderer } from "echarts/renderers";

use([BarChart, CustomChart, LineChart, AriaComponent, GridComponent, LegendComponent, SVGRenderer]);

// The same name as the stock distribution, so that either can be drawn with.
globalThis.echarts = { init, setPlatformAPI, version };
