SELECT m.refrigerant,
  count(DISTINCT m.session) AS calls,
  sum(CASE WHEN m.direction = 'in' THEN m.kg ELSE 0 END) AS added_kg,
  sum(CASE WHEN m.direction = 'out' THEN m.kg ELSE 0 END) AS recovered_kg
FROM moves m JOIN calls c ON c.session = m.session
GROUP BY m.refrigerant ORDER BY m.refrigerant
