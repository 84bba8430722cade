/**
 * The reader of YAML wherever the sources say `yaml`, by `paths` of tsconfig.json: its build for browsers. That for Node asks
 * the environment at every token and writes what it reads to the console when told so there.
 */
export * from '../../node_modules/yaml/browser/index.js';
