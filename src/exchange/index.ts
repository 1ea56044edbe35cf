export { metricsToCsv } from "./metricsToCsv.js";
export { stepsToCsv } from "./stepsToCsv.js";
export { summaryToCsv } from "./summaryToCsv.js";
