SELECT d.asked, d.kind, count(*) AS times, count(DISTINCT d.session) AS calls
FROM doubts d JOIN calls c ON c.session = d.session
GROUP BY d.asked, d.kind ORDER BY times DESC, d.asked, d.kind
