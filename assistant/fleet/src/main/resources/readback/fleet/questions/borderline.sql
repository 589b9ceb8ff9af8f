SELECT v.verdict,
  count(*) AS verdicts,
  count(*) FILTER (WHERE v.borderline) AS borderline,
  1.0 * count(*) FILTER (WHERE v.borderline) / count(*) AS share
FROM verdicts v JOIN calls c ON c.session = v.session
WHERE v.judged = 'charge'
GROUP BY v.verdict ORDER BY v.verdict
