import { type Attributes, element } from "../../markup/element.js";

/** Shapes that tell marks apart without their colour. */
export type MarkerShape = "circle" | "square" | "up" | "down" | "diamond";

/** Draws a marker around a point; the colour is the caller's. */
export function marker(
  shape: MarkerShape,
  x: number,
  y: number,
  radius: number,
  attributes: Attributes = {},
): string {
  if (shape === "circle") return element("circle", { cx: x, cy: y, r: radius, ...attributes });
  const half = 0.88 * radius;
  if (shape === "square") {
    return element("rect", { x: x - half, y: y - half, width: 2 * half, height: 2 * half, ...attributes });
  }
  const corners: Readonly<Record<"up" | "down" | "diamond", readonly (readonly [number, number])[]>> = {
    up: [
      [0, -1.2],
      [1.1, 0.8],
      [-1.1, 0.8],
    ],
    down: [
      [0, 1.2],
      [1.1, -0.8],
      [-1.1, -0.8],
    ],
    diamond: [
      [0, -1.35],
      [1.35, 0],
      [0, 1.35],
      [-1.35, 0],
    ],
  };
  const points = corners[shape].map(([dx, dy]) => `${tenth(x + radius * dx)},${tenth(y + radius * dy)}`);
  return element("path", { d: `M${points.join("L")}Z`, ...attributes });
}

function tenth(value: number): number {
  return Number(value.toFixed(1));
}
