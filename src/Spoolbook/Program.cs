Console.WriteLine("spoolbook");
