/** Studies: the steps run many times over. */
export * from './advise/index.js';
