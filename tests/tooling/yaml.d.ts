export * from '../../node_modules/yaml/dist/index.js';
