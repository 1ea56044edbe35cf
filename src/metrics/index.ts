export type { Metric, MetricComponent, MetricFamily, MetricNeed, Normalisation } from "./metric.js";
