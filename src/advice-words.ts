/** Advice as finished text. */
export { type AdviceView, type AlternativeView, adviceView } from './report/advice-view.js';
