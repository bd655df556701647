// Runs before the bundle: what ECharts expects of any host. Without window,
// self and document it takes itself to be on a server. Nothing is animated, so
// timers never fire.
var globalThis = this;
globalThis.setTimeout = globalThis.setInterval = function () { return 0; };
globalThis.clearTimeout = globalThis.clearInterval = function () {};
globalThis.console = { log: function () {}, warn: function () {}, error: function () {} };
