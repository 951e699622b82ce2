var app = WebApplication.CreateSlimBuilder(args).Build();
app.Run();
