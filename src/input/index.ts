/** From the text of a file to a checked installation. */
export { installationJsonSchema, type JsonSchema } from './json-schema.js';
export { type Firm, type ReadFirm, readFirm } from './read-firm.js';
export { type ReadInstallation, readInstallation } from './read-installation.js';
