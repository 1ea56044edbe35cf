/** The library's version, written into the settings of every result. */
export const VERSION = "0.1.0";
