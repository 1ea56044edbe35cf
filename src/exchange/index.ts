export { metricsToCsv } from "./metricsToCsv.js";
export { readComparison } from "./readComparison.js";
export { readJson } from "./readJson.js";
export { readTrial } from "./readTrial.js";
export { stepsToCsv } from "./stepsToCsv.js";
export { summaryToCsv } from "./summaryToCsv.js";
export { writeJson } from "./writeJson.js";
