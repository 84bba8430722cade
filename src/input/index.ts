/** From the text of a file to a checked installation. */
export { type Path, pathText } from './draft.js';
export { installationJsonSchema, type JsonSchema } from './json-schema.js';
export { type OpenedFile, openForTrials } from './open-for-trials.js';
export { type Firm, type ReadFirm, readFirm } from './read-firm.js';
export { type ReadInstallation, readInstallation } from './read-installation.js';
export { readContent, sameWritten, writtenLength } from './written-value.js';
