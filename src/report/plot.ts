export { scaleLinear } from "d3-scale";
export { area, line } from "d3-shape";
