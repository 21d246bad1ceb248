"use strict";

const assert = require("node:assert/strict");
const test = require("node:test");
const { dressed, verdict } = require("../src/page");

test("a page runs the one script that was added, and loads nothing", () => {
  const page = dressed("<!DOCTYPE html><html><head><title>x</title></head><body><p>$& 1</p></body></html>", "abc");
  assert.match(page, /default-src 'none'; style-src 'unsafe-inline'; script-src 'nonce-abc'/);
  assert.equal(page.match(/<script/g).length, 1);
  assert.ok(page.includes('<script nonce="abc">') && page.includes("<p>$& 1</p>"));
});

const limit = (margin, verdict = "met") => ({ quantity: "erp", value_w: 24.668, limit_w: 30, margin_db: margin, uncertainty_db: 0.74, verdict });
const report = (...limits) => ({
  stations: [{ chains: [{ name: "out", file: "a/hill.downlead", bands: [{ band: "2m", limits }] }] }],
});

test("the status bar says the nearest limit of the file", () => {
  const said = verdict(report(limit(3), limit(0.85)), "/w/a/hill.downlead");
  assert.equal(said.text, "2m 24.7 W ERP, met 0.85 dB");
  assert.equal(said.bad, false);
  assert.equal(verdict(report(limit(-1.2, "not-met")), "/w/a/hill.downlead").text, "2m 24.7 W ERP, not met 1.20 dB");
});

test("a file without a limit says nothing", () => {
  assert.equal(verdict(report(limit(1)), "/w/other.downlead"), undefined);
  assert.equal(verdict(report(), "/w/a/hill.downlead"), undefined);
  assert.equal(verdict(undefined, "/w/a/hill.downlead"), undefined);
});
