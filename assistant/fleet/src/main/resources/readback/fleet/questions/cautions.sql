SELECT k.caution, k.signal,
  count(*) AS given,
  count(*) FILTER (WHERE k.waits) AS waits_for_word,
  count(*) FILTER (WHERE k.passed_over) AS passed_over
FROM cautions k JOIN calls c ON c.session = k.session
GROUP BY k.caution, k.signal ORDER BY passed_over DESC, given DESC, k.caution
