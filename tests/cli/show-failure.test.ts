import { expect, test } from 'vitest';
import { showFailure } from '../../src/cli/terminal/show-failure.js';
import { EngineError, IssuesError } from '../../src/issues/issue.js';
import { fakeEnvironment } from './fake-environment.js';

function shown(error: unknown) {
  const said = { output: '', messages: '' };
  const status = showFailure(error, 'pump.yaml', fakeEnvironment(said));
  return { status, ...said };
}

test('a fault of ours is owned up to, ends with 70, and shows no stack', () => {
  const { status, output, messages } = shown(new TypeError('x is not a function'));
  expect({ status, output }).toEqual({ status: 70, output: '' });
  expect(messages).toContain('its own fault');
  expect(messages).toContain('x is not a function');
  expect(messages).not.toMatch(/\n\s+at |file:\/\//);
});

test('an error of the engine is a sentence about the file', () => {
  const { status, messages } = shown(new EngineError('cli.input.not-text', { file: 'pump.yaml' }));
  expect(status).toBe(2);
  expect(messages).toContain('pump.yaml is not UTF-8 text');
});

test('every issue of a list is shown, and warnings do not decide the status', () => {
  const { status, messages } = shown(
    new IssuesError([
      { code: 'cli.input.not-text', severity: 'warning', data: { file: 'a' } },
      { code: 'cli.read.failed', severity: 'error', data: { file: 'b', reason: 'it is a folder' } },
    ]),
  );
  expect(status).toBe(3);
  expect(messages).toContain('a is not UTF-8 text');
  expect(messages).toContain('b cannot be read');
});
