"""The page of acid and water: a part for each thing that hurts or stays."""
