export { parseQuantity, type QuantityOf } from "./parseQuantity.js";
