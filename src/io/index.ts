export { READ_CSV_DEFAULTS, type ReadCsvOptions } from "./csv/options.js";
export { readCsv, ZERO_TOLERANCE } from "./csv/readCsv.js";
export { TIME_TOLERANCE } from "./csv/timeGrid.js";
export { writeCsv } from "./csv/writeCsv.js";
