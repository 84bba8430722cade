import { expect, test } from 'vitest';
import { hydraulicPower, motorPower } from '../../src/checks/practice/motor-power.js';
import { runCheck } from '../../src/checks/run-check.js';
import { practiceFinding, practiceSubject } from './practice-subject.js';

const duty = (change: Readonly<Record<string, string>>) => ({
  pump: { duty: { flow: '150 m3/h', head: '20 m', ...change } },
});
/** 1000 × 9.80665 × (150 / 3600) × 20 [W], and over 75 %. */
const HYDRAULIC = 8172.2;

test('the power taken at the shaft meets the rating', () => {
  const finding = practiceFinding(motorPower);
  expect(finding).toMatchObject({ verdict: 'meets', limit: 15000, unit: 'W' });
  expect(finding.demand).toBeCloseTo(HYDRAULIC / 0.75, 0);
});

test('1,200 gpm at 45 ft take 13.64 hp of water, the printed gpm · ft / 3960', () => {
  const subject = practiceSubject({
    service: { density: '998.2 kg/m3' },
    pump: { duty: { flow: '1200 gpm', head: '45 ft' } },
  });
  expect(hydraulicPower(subject) / 745.69987).toBeCloseTo((1200 * 45) / 3960, 1);
});

test('too small a motor exceeds, and no service factor carries it', () => {
  const motor = { power: '11 kW', 'service-factor': 1.15 };
  expect(practiceFinding(motorPower, { motor })).toMatchObject({ verdict: 'meets', limit: 11000 });
  // 10.9 kW at the shaft: over 10 kW, within 10 kW × 1.15.
  const tight = { power: '10 kW', 'service-factor': 1.15 };
  expect(practiceFinding(motorPower, { motor: tight })).toMatchObject({
    verdict: 'exceeds',
    comparison: false,
    reason: { code: 'checks.motor-power.exceeds' },
  });
});

test('above the nameplate it exceeds, with the service factor unknown and on a drive', () => {
  expect(practiceFinding(motorPower, { motor: { power: '10 kW' } })).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.motor-power.exceeds' },
  });
  const motor = {
    power: '10 kW',
    'service-factor': 1.15,
    start: { 'variable-speed drive': { 'torque-limit': '110 %', ramp: '20 s' } },
  };
  expect(practiceFinding(motorPower, { motor })).toMatchObject({
    verdict: 'exceeds',
    limit: 10000,
    reason: { code: 'checks.motor-power.exceeds-on-drive' },
  });
});

test('without the efficiency it cannot be told, unless the liquid alone takes more than the motor has', () => {
  expect(practiceFinding(motorPower, duty({}))).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.motor-power.no-efficiency' },
  });
  const motor = { power: '8 kW', 'service-factor': 1 };
  expect(practiceFinding(motorPower, { ...duty({}), motor })).toMatchObject({ verdict: 'exceeds' });
});

test.each([Number.NaN, 0, -1])('an efficiency of %d is no pass', (efficiency) => {
  const subject = practiceSubject();
  const { pump } = subject.installation;
  const broken = { ...pump, duty: { ...pump.duty, efficiency } };
  const [finding] = runCheck(motorPower, {
    ...subject,
    installation: { ...subject.installation, pump: broken },
  });
  expect(finding?.verdict).toBe('cannot-tell');
});
