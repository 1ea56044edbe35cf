import type { Comparison, ComponentComparison, MetricComparison } from "../../compare/index.js";

/** The metrics that speak for components, with the component, in the order of these. */
export function speakers({
  components,
  metrics,
}: Comparison): readonly { readonly component: ComponentComparison; readonly metric: MetricComparison }[] {
  return components.flatMap((component) => {
    const metric = metrics.find(({ id }) => id === component.metric);
    return metric === undefined ? [] : [{ component, metric }];
  });
}
