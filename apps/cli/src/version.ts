/** The version that `eaveline --version` and the papers print; a test holds it to package.json. */
export const VERSION = '0.1.0';
