/** From the text of a file to a checked installation. */
export { installationJsonSchema, type JsonSchema } from './json-schema.js';
export { type ReadInstallation, readInstallation } from './read-installation.js';
